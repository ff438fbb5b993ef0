/** The page unpacks its own script: that it starts, and what it says where it cannot. */
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from '../browser/launch';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const BUILT = readFileSync('dist/sidebar.html', 'utf8');
const TOO_OLD = /^This browser is too old for the sidebar\. Update it .*, then open the sidebar again\./;
const NOT_STARTED = /^The sidebar’s script did not start\. Reload the spreadsheet/;

interface Case {
  readonly html?: string;
  readonly headers?: Record<string, string>;
  readonly before?: () => void;
}

async function open({ html = BUILT, headers = {}, before }: Case): Promise<Page> {
  const page = await (browser as Browser).newPage({ viewport: { width: 300, height: 700 } });
  if (before) await page.addInitScript(before);
  await page.route('https://sidebar.test/', (route) =>
    route.fulfill({ headers: { 'content-type': 'text/html', ...headers }, body: html }),
  );
  await page.goto('https://sidebar.test/');
  return page;
}

function forgetDecompression(): void {
  Reflect.deleteProperty(window, 'DecompressionStream');
}

/** Lets the page's first script run and none that it makes. */
const FIRST_SCRIPT_ONLY = {
  html: BUILT.replace('<script>', '<script nonce="first">'),
  headers: { 'content-security-policy': "script-src 'nonce-first'" },
};

test.each([
  ['a browser that cannot unpack', { before: forgetDecompression }, TOO_OLD],
  ['a frame whose policy refuses the script', FIRST_SCRIPT_ONLY, NOT_STARTED],
  ['a file that lost a line', { html: BUILT.replace(/\n'[\w-]{900,}',\n/, '\n') }, NOT_STARTED],
  ['a file with a letter changed', { html: BUILT.replace(/('[\w-]{500})\w/, '$1+') }, NOT_STARTED],
] as const)('%s: one sentence with the way out', async (name, where, sentence) => {
  if (!browser) return;
  const page = await open(where);
  await page.waitForFunction(() => document.getElementById('app')?.hasChildNodes());
  expect(await page.locator('#app').textContent()).toMatch(sentence);
  await page.screenshot({ path: `test-output/sidebar/unpack-${name.split(' ').at(-1)}.png` });
});

test('the built page starts', async ({ skip }) => {
  if (!browser) skip();
  const page = await open({});
  await page.getByRole('heading', { name: 'What do you want to do?' }).waitFor();
});
