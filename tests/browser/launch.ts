/**
 * A real headless Chromium for tests: the one in SOUNDER_CHROMIUM, else the system's, else the one that the npm
 * package @sparticuz/chromium carries (SOUNDER_CHROMIUM=packaged takes that one at once). Where there is none, browser tests say so loudly and are skipped, unless
 * SOUNDER_BROWSER=required.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const ARGUMENTS = [
  '--headless=new',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const SYSTEM_PATHS = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const LAUNCH_TIMEOUT_MS = 60_000;

type Start = { executablePath: string; env?: Record<string, string> };

/** Every way to start a browser that is worth trying here, best first. */
function startsToTry(reasons: string[]): Start[] {
  const wanted = process.env.SOUNDER_CHROMIUM;
  if (wanted === 'packaged') return packagedStarts();
  if (wanted) return [{ executablePath: wanted }];
  const system = SYSTEM_PATHS.filter((path) => existsSync(path)).map((executablePath) => ({
    executablePath,
  }));
  if (system.length > 0) return system;
  try {
    return packagedStarts();
  } catch (error) {
    reasons.push(`@sparticuz/chromium did not unpack: ${String(error).split('\n')[0]}`);
    return [];
  }
}

/** Unpacks the browser of the npm package once, beside the other packages' caches. */
function packagedStarts(): Start[] {
  if (process.platform !== 'linux' || process.arch !== 'x64') return [];
  const cache = join(process.cwd(), 'node_modules/.cache/sounder-chromium');
  if (!existsSync(join(cache, 'chromium'))) unpack(cache);
  const libraries = join(cache, 'al2023/lib');
  const env = {
    ...inherited(),
    FONTCONFIG_PATH: existsSync('/etc/fonts') ? '/etc/fonts' : join(cache, 'fonts'),
  };
  const executablePath = join(cache, 'chromium');
  // With the system's own libraries first; a bare Linux has not all of them, then the package's.
  return [
    { executablePath, env },
    { executablePath, env: { ...env, LD_LIBRARY_PATH: libraries } },
  ];
}

function inherited(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(process.env).filter((pair): pair is [string, string] => pair[1] !== undefined),
  );
}

/** In a folder of its own first: several test files may start at once. */
function unpack(cache: string): void {
  const part = `${cache}-${process.pid}`;
  mkdirSync(part, { recursive: true });
  const script = "import('@sparticuz/chromium').then(({ default: packed }) => packed.executablePath())";
  // The package unpacks into the temporary folder, and its libraries only where it believes to be on Lambda.
  const env = { ...process.env, TMPDIR: part, AWS_LAMBDA_JS_RUNTIME: 'nodejs22.x' };
  execFileSync(process.execPath, ['-e', script], { env, stdio: 'ignore' });
  if (existsSync(cache)) rmSync(part, { recursive: true });
  else renameSync(part, cache);
}

/** A running browser, or undefined where none starts and none is required. */
export async function launchBrowser(): Promise<Browser | undefined> {
  const reasons: string[] = [];
  for (const start of startsToTry(reasons)) {
    try {
      return await chromium.launch({ ...start, args: ARGUMENTS, timeout: LAUNCH_TIMEOUT_MS });
    } catch (error) {
      reasons.push(`${start.executablePath}: ${String(error).split('\n')[0]}`);
    }
  }
  const why = reasons.join('; ') || 'no Chromium found; set SOUNDER_CHROMIUM to one';
  if (process.env.SOUNDER_BROWSER === 'required') {
    throw new Error(`A browser is required (SOUNDER_BROWSER=required) but none started: ${why}`);
  }
  const line = '!'.repeat(78);
  console.warn(`\n${line}\nNO BROWSER: the browser tests are SKIPPED. ${why}\n${line}\n`);
  return undefined;
}
