/** Serves the preview's page, the built files and the sample farms on this computer only. */
import { readdir, readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { basename, dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

export type PreviewOptions = {
  /** Wanted port; another one is taken where it is in use. */
  port?: number;
  /** Folder with the built Code.js and sidebar.html. */
  built?: string;
  samples?: string;
};
export type Preview = { url: string; close(): Promise<void> };

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '../..');
const PAGE = join(ROOT, 'src/preview/page');
const MODULES = join(ROOT, 'node_modules');
const DEFAULT_PORT = 8765;

/** The engine and its companions, unmodified, each as its own file. */
const VENDOR: Readonly<Record<string, string>> = {
  'bootstrap.css': 'bootstrap/dist/css/bootstrap.min.css',
  'font-awesome.css': 'font-awesome/css/font-awesome.min.css',
  'o_spreadsheet.css': '@odoo/o-spreadsheet/dist/o_spreadsheet.css',
  'o_spreadsheet.js': '@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js',
  'o_spreadsheet.xml': '@odoo/o-spreadsheet/dist/o_spreadsheet.xml',
  'owl.js': '@odoo/owl/dist/owl.iife.min.js',
  'chart.js': 'chart.js/dist/chart.umd.js',
  'exceljs.js': 'exceljs/dist/exceljs.min.js',
};

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.xml': 'text/xml; charset=utf-8',
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
};

/**
 * Nothing from outside. The engine compiles its templates with `new Function`, hence unsafe-eval. The sidebar starts a
 * worker from its own script's text; whether Google's frame lets it is not known.
 */
const CONTENT_POLICY = [
  "default-src 'self'",
  "script-src 'self' 'unsafe-inline' 'unsafe-eval'",
  'worker-src blob:',
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
].join('; ');

/** Bundled scripts of the page, made once per run. */
const bundles = new Map<string, Promise<string>>();

function bundled(entry: string): Promise<string> {
  const text = bundles.get(entry) ?? bundle(entry);
  bundles.set(entry, text);
  return text;
}

async function bundle(entry: string): Promise<string> {
  const result = await build({
    entryPoints: [join(PAGE, entry)],
    bundle: true,
    format: 'iife',
    target: 'es2022',
    write: false,
    logLevel: 'silent',
  });
  return result.outputFiles[0]!.text;
}

async function sampleNames(folder: string): Promise<string[]> {
  const names = await readdir(folder).catch(() => []);
  return names
    .filter((name) => name.endsWith('.xlsx') && !name.startsWith('~'))
    .map((name) => basename(name, '.xlsx'))
    .sort();
}

/** The wanted sample; "none" for an empty workbook; otherwise the first by name. */
async function sampleName(folder: string, wanted: string): Promise<string> {
  const names = await sampleNames(folder);
  if (wanted === 'none') return '';
  return names.find((name) => name === wanted) ?? names[0] ?? '';
}

type Routes = (path: string, query: URLSearchParams) => Promise<string | Buffer | undefined>;

function routesOf(options: PreviewOptions): Routes {
  const builtFolder = options.built ?? join(ROOT, 'dist');
  const sampleFolder = options.samples ?? join(ROOT, 'sample-sheets');
  return async (path, query) => {
    const [, folder = '', name = ''] = /^\/(?:([\w-]+)\/)?([^/]*)$/.exec(path) ?? [];
    if (path === '/') return readFile(join(PAGE, 'index.html'));
    if (path === '/page.css') return readFile(join(PAGE, 'page.css'));
    if (path === '/page.js') return bundled('page.ts');
    if (path === '/page-before.js') return bundled('page-before.ts');
    if (path === '/run-shim.js') return bundled('run-shim.ts');
    if (path === '/sample-name') return sampleName(sampleFolder, query.get('sample') ?? '');
    if (folder === 'built' && ['Code.js', 'sidebar.html'].includes(name))
      return readFile(join(builtFolder, name));
    if (folder === 'vendor' && VENDOR[name]) return readFile(join(MODULES, VENDOR[name]));
    if (folder === 'fonts' && /^fontawesome-webfont\.\w+$/.test(name)) {
      return readFile(join(MODULES, 'font-awesome/fonts', name));
    }
    if (folder === 'samples' && (await sampleNames(sampleFolder)).includes(basename(name, '.xlsx'))) {
      return readFile(join(sampleFolder, name));
    }
    return undefined;
  };
}

async function answer(routes: Routes, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const host = request.headers.host ?? '';
  const address = new URL(request.url ?? '/', 'http://127.0.0.1');
  // Another site's page must not reach the preview through a name that points to this computer.
  if (!/^(127\.0\.0\.1|localhost)(:\d+)?$/.test(host)) {
    response.writeHead(403).end();
    return;
  }
  const path = decodeURIComponent(address.pathname);
  const body = await routes(path, address.searchParams);
  if (body === undefined) {
    response.writeHead(404).end(`Nothing at ${path}`);
    return;
  }
  response.writeHead(200, {
    'content-type': TYPES[path === '/' ? '.html' : extname(path)] ?? 'text/plain; charset=utf-8',
    'content-security-policy': CONTENT_POLICY,
    'cache-control': 'no-store',
  });
  response.end(body);
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });
}

export async function startPreview(options: PreviewOptions = {}): Promise<Preview> {
  const routes = routesOf(options);
  const server = createServer((request, response) => {
    answer(routes, request, response).catch((error: unknown) => {
      response.writeHead(500).end(error instanceof Error ? error.message : String(error));
    });
  });
  try {
    await listen(server, options.port ?? DEFAULT_PORT);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
    await listen(server, 0);
  }
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
