/**
 * Finds a Chromium and starts it: the one named in SOUNDER_CHROMIUM, the system's, or the one that the
 * @sparticuz/chromium package carries (Linux). Without one the browser tests are skipped, loudly;
 * SOUNDER_BROWSER=required makes that a failure.
 */
import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const SYSTEM_CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const PLAIN_ARGS = ['--no-sandbox', '--disable-dev-shm-usage'];

/** A running browser, or undefined where none is found and none is required. */
export async function launchBrowser(): Promise<Browser | undefined> {
  try {
    const { executablePath, args } = await findChromium();
    return await chromium.launch({ executablePath, args });
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    if (process.env.SOUNDER_BROWSER === 'required') {
      throw new Error(`A browser is required (SOUNDER_BROWSER=required) but none started: ${why}`);
    }
    console.warn(`\n*** NO BROWSER: the browser tests are SKIPPED. ${why}\n`);
    return undefined;
  }
}

async function findChromium(): Promise<{ executablePath: string; args: string[] }> {
  const named = process.env.SOUNDER_CHROMIUM;
  if (named) return { executablePath: named, args: PLAIN_ARGS };
  const system = SYSTEM_CHROMIUM.find((path) => existsSync(path));
  if (system) return { executablePath: system, args: PLAIN_ARGS };
  const { default: carried } = await import('@sparticuz/chromium');
  return { executablePath: await carried.executablePath(), args: [...carried.args, ...PLAIN_ARGS] };
}
