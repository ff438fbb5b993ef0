/** Builds the page from its sources and opens it at the sidebar's width beside a stand-in for the spreadsheet. */
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { CallName } from '../../shared/contract';
import { sidebarPage } from '../../src/generate/sidebar-page';
import { unfold } from '../browser/unfold';

const SIDEBAR = { width: 300, height: 700 };
const SHOTS = 'test-output/sidebar';

let page: Promise<string> | undefined;

/** Whatever answers the page: a stand-in, or the real script over a workbook. */
export interface AnsweringSheet {
  readonly answer: (
    name: CallName,
    text: string,
  ) => { reply: string | null } | { error: string } | { silent: true };
}

/** The page as the build makes it, without minifying. */
function pageText(): Promise<string> {
  page ??= sidebarPage({ minify: false });
  return page;
}

export interface Opened {
  readonly page: Page;
  /** Errors that the page threw or logged; must stay empty. */
  readonly errors: readonly string[];
}

export interface OpenOptions extends BrowserContextOptions {
  /** What an answer rests on stays folded away, as at first sight. */
  readonly isFolded?: boolean;
}

/** Without a sheet the page stands alone, with no script to ask. */
export async function openSidebar(
  browser: Browser,
  sheet: AnsweringSheet | undefined,
  { isFolded = false, ...options }: OpenOptions = {},
  beforeLoad: (page: Page) => Promise<void> = async () => undefined,
): Promise<Opened> {
  const context = await browser.newContext({ viewport: SIDEBAR, ...options });
  const opened = await context.newPage();
  opened.setDefaultTimeout(120_000);
  const errors: string[] = [];
  opened.on('pageerror', (error) => errors.push(error.message));
  opened.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  if (sheet) {
    await opened.exposeFunction('fakeAnswer', (name: CallName, text: string) => sheet.answer(name, text));
    await opened.addInitScript(fakeGoogle);
  }
  if (!isFolded) await opened.addInitScript(unfold);
  await beforeLoad(opened);
  const html = await pageText();
  await context.route('https://sidebar.test/', (route) =>
    route.fulfill({ contentType: 'text/html', body: html }),
  );
  await opened.goto('https://sidebar.test/');
  return { page: opened, errors };
}

/** Runs in the page: google.script.run with its chain of handlers. */
function fakeGoogle(): void {
  type Handler = (value: unknown) => void;
  type Answer = { reply?: string | null; error?: string; silent?: boolean };
  const world = window as unknown as {
    google: unknown;
    fakeAnswer: (name: string, text: string) => Promise<Answer>;
  };
  const runner = (onReply: Handler, onError: Handler): unknown => ({
    withSuccessHandler: (handler: Handler) => runner(handler, onError),
    withFailureHandler: (handler: Handler) => runner(onReply, handler),
    answerSidebar: (name: string, text: string) => {
      world.fakeAnswer(name, text).then((answer) => {
        if (answer.silent) return;
        if (answer.error !== undefined) onError(new Error(answer.error));
        else onReply(answer.reply);
      });
    },
  });
  const nothing: Handler = () => undefined;
  world.google = { script: { run: runner(nothing, nothing) } };
}

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** A picture of what the sidebar's window shows now. */
export async function shootWindow({ page: opened }: Opened, name: string): Promise<void> {
  if (!existsSync(SHOTS)) mkdirSync(SHOTS, { recursive: true });
  await opened.screenshot({ path: `${SHOTS}/${name}.png` });
}

/** Checks the page as it stands with axe-core and keeps a picture for looking at. */
export async function checkAndShoot({ page: opened }: Opened, name: string): Promise<void> {
  if (!existsSync(SHOTS)) mkdirSync(SHOTS, { recursive: true });
  await opened.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
  await opened.evaluate(axeSource);
  const violations = await opened.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run: () => Promise<{ violations: AxeViolation[] }> } };
    const found = await axe.run();
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
  });
  expect(violations, `axe-core on ${name}`).toEqual([]);
}

interface AxeViolation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}
