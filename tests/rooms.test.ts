/** Which room may import which. The same table stands in DEVELOPERS.md; this test enforces it. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

interface Room {
  /** Folder, longest match wins. */
  readonly folder: string;
  /** Folders of ours that it may import, itself included. */
  readonly rooms: readonly string[];
  /** Packages that it may import; "node:" stands for all of Node. */
  readonly packages: readonly string[];
}

/** Files of `shared` itself, and each room with the rooms of `shared` that it may import beside itself. */
const WITHIN_SHARED: readonly (readonly [room: string, imports: readonly string[], packages?: string[]])[] = [
  ['units', []],
  ['refusals', ['units']],
  ['sources', []],
  ['contract', [], ['valibot']],
  ['tables', ['units', 'sources']],
  ['core', ['units', 'tables', 'refusals'], ['geographiclib-geodesic']],
  ['catalogue', ['core', 'units', 'tables', 'sources', 'refusals']],
  ['door', ['catalogue', 'core', 'units', 'refusals']],
  ['samples', ['core']],
  ['plan', ['core', 'tables', 'units', 'refusals']],
  ['locale', ['units']],
  ['block', ['contract', 'core']],
  ['lists', ['block', 'contract', 'core', 'locale', 'plan', 'refusals', 'tables', 'units']],
  ['table', ['block', 'contract', 'core', 'lists', 'plan', 'refusals', 'tables', 'units']],
  [
    'tasks',
    [
      'block',
      'contract',
      'core',
      'lists',
      'locale',
      'plan',
      'refusals',
      'samples',
      'sources',
      'table',
      'tables',
      'units',
    ],
  ],
];

const ROOMS: readonly Room[] = [
  ...WITHIN_SHARED.map(([room, imports, packages = []]) => ({
    folder: `shared/${room}`,
    rooms: [room, ...imports].map((name) => `shared/${name}`),
    packages,
  })),
  { folder: 'src/script', rooms: ['src/script', 'shared'], packages: ['valibot'] },
  {
    folder: 'src/sidebar',
    rooms: ['src/sidebar', 'shared'],
    packages: ['preact', 'valibot', '@tmcw/togeojson'],
  },
  {
    folder: 'src/preview',
    rooms: ['src/preview', 'shared/contract', 'shared/core/calendar'],
    packages: ['node:', '@odoo/o-spreadsheet', '@odoo/owl', 'exceljs', 'esbuild'],
  },
  { folder: 'src/headless', rooms: ['src/preview', 'shared'], packages: ['node:'] },
  {
    folder: 'src/generate',
    rooms: ['src/generate', 'src/headless', 'shared'],
    packages: ['node:', 'esbuild', 'exceljs', 'rolldown'],
  },
];

interface Import {
  readonly file: string;
  readonly target: string;
}

describe('rooms', () => {
  const files = ['shared', 'src'].flatMap(sourceFiles);
  const imports = files.flatMap(importsOf);

  it('has files to look at', () => {
    expect(files.length).toBeGreaterThan(50);
    expect(imports.length).toBeGreaterThan(100);
  });

  it('imports only what the table allows', () => {
    expect(imports.filter((one) => !isAllowed(one)).map(({ file, target }) => `${file} → ${target}`)).toEqual(
      [],
    );
  });

  it('has no circles among the rooms of shared', () => {
    const done: string[] = [];
    const left = new Map(WITHIN_SHARED.map(([room, imports]) => [room, imports]));
    const isReady = (room: string) => left.get(room)!.every((one) => done.includes(one));
    for (;;) {
      const next = [...left.keys()].find(isReady);
      if (next === undefined) break;
      left.delete(next);
      done.push(next);
    }
    expect([...left.keys()]).toEqual([]);
  });

  it('touches Apps Script services in src/script/google.ts and google-scratch.ts only', () => {
    const services = /\b(SpreadsheetApp|HtmlService|LockService|Utilities|Session|PropertiesService)\s*\./;
    const touching = files.filter((file) => file.startsWith('src/script') && services.test(code(file)));
    expect(touching.sort()).toEqual(['src/script/google-scratch.ts', 'src/script/google.ts']);
  });

  it('touches google.script in src/sidebar/server.ts only', () => {
    const touching = files.filter(
      (file) => file.startsWith('src/sidebar') && /google\.script/.test(code(file)),
    );
    expect(touching).toEqual(['src/sidebar/server.ts']);
  });

  it('keeps clock and chance out of what we know', () => {
    const impure = /\b(new Date|Date\.now|Math\.random|performance\.)/;
    expect(files.filter((file) => file.startsWith('shared') && impure.test(code(file)))).toEqual([]);
  });

  it('never sets HTML from text', () => {
    const unsafe = /innerHTML|dangerouslySetInnerHTML|insertAdjacentHTML|document\.write/;
    expect(files.filter((file) => file.startsWith('src/sidebar') && unsafe.test(code(file)))).toEqual([]);
  });

  it('stores nothing in properties', () => {
    expect(files.filter((file) => /PropertiesService/.test(code(file)))).toEqual(
      files.filter((file) => file.startsWith('src/preview') && /PropertiesService/.test(code(file))),
    );
  });
});

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** Source text without comments, so that a comment may name what the code may not touch. */
function code(file: string): string {
  return readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '');
}

function importsOf(file: string): Import[] {
  const forms = /^(?:import|export)\s[^;'"]*?\bfrom\s+'([^']+)'|^import\s+'([^']+)'|\bimport\(\s*'([^']+)'/gm;
  const found = code(file).matchAll(forms);
  return [...found].map((match) => ({
    file,
    target: resolveTarget(file, match[1] ?? match[2] ?? match[3] ?? ''),
  }));
}

function resolveTarget(file: string, target: string): string {
  return target.startsWith('.') ? relative('.', join(dirname(file), target)) : target;
}

function isAllowed({ file, target }: Import): boolean {
  const room = ROOMS.filter(({ folder }) => file.startsWith(`${folder}/`) || file === `${folder}.ts`).sort(
    (a, b) => b.folder.length - a.folder.length,
  )[0];
  if (!room) return false;
  const own = /^(shared|src|tests|sample-sheets)(\/|$)/.test(target);
  const allowed = own ? room.rooms : room.packages;
  return allowed.some((name) => target === name || target.startsWith(name.endsWith(':') ? name : `${name}/`));
}
