/** The preview's page in a real browser, for tests: cells by name, menu, sidebar, pictures. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, FrameLocator, Page } from 'playwright-core';
import type { Host } from '../../src/preview/host';
import { type PreviewOptions, startPreview } from '../../src/preview/server';
import { unfold } from './unfold';

declare global {
  interface Window {
    sounderPreview: Host;
  }
}

export type OpenOptions = PreviewOptions & {
  /** Query of the page: sample, locale, tz, today. */
  query?: Record<string, string>;
  width?: number;
  height?: number;
  /** Runs in the page before its own scripts. */
  before?: () => void;
  /** What an answer rests on stays folded away, as at first sight. */
  isFolded?: boolean;
};

const START_TIMEOUT_MS = 90_000;
/** Where pictures for looking at are kept. */
export const SHOTS = 'test-output/screenshots';

export class PreviewPage {
  /** What the page logged as an error or threw. Tests expect it to stay empty. */
  readonly problems: string[] = [];
  /** Addresses outside the preview that the page asked for. */
  readonly outside: string[] = [];

  private constructor(
    readonly page: Page,
    readonly url: string,
    private readonly stop: () => Promise<void>,
  ) {
    page.on('pageerror', (error) => this.problems.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') this.problems.push(message.text());
    });
    page.on('request', (request) => {
      if (!/^(http:\/\/127\.0\.0\.1:|data:|blob:|about:)/.test(request.url()))
        this.outside.push(request.url());
    });
  }

  /** Serves the preview on a free port and opens it in its own page of the browser. */
  static async open(browser: Browser, options: OpenOptions = {}): Promise<PreviewPage> {
    const { query = {}, width = 1280, height = 800, before, isFolded = false, ...server } = options;
    const preview = await startPreview({ port: 0, ...server });
    const page = await browser.newPage({ viewport: { width, height }, acceptDownloads: true });
    const opened = new PreviewPage(page, preview.url, () => preview.close());
    if (!isFolded) await page.addInitScript(unfold);
    if (before) await page.addInitScript(before);
    await page.goto(`${preview.url}?${new URLSearchParams(query)}`);
    await opened.ready();
    return opened;
  }

  async close(): Promise<void> {
    await this.page.close();
    await this.stop();
  }

  async ready(): Promise<void> {
    await this.page.waitForFunction(() => Boolean(window.sounderPreview), null, {
      timeout: START_TIMEOUT_MS,
    });
    await this.page.locator('.o-grid canvas').first().waitFor();
  }

  /** Shows a tab by clicking its name at the bottom. */
  async openTab(tab: string): Promise<void> {
    const isOpen = await this.page.evaluate(
      (name) => window.sounderPreview.state.book.model.getters.getActiveSheetName() === name,
      tab,
    );
    if (!isOpen) await this.page.locator('.o-sheet').filter({ hasText: tab }).first().click();
  }

  /** Middle of a cell on the screen; scrolls there first. */
  async placeOf(tab: string, a1: string): Promise<{ x: number; y: number }> {
    await this.openTab(tab);
    const offset = await this.page.evaluate((text) => {
      const { book } = window.sounderPreview.state;
      const position = book.engine.helpers.toCartesian(text);
      const zone = { left: position.col, right: position.col, top: position.row, bottom: position.row };
      const { getters } = book.model;
      if (!getters.isVisibleInViewport({ sheetId: getters.getActiveSheetId(), ...position })) {
        book.run({ type: 'SCROLL_TO_CELL', ...position });
      }
      const rect = getters.getVisibleRect(zone);
      return { x: rect.x + rect.width / 2, y: rect.y + rect.height / 2 };
    }, a1);
    const canvas = await this.page.locator('.o-grid canvas').first().boundingBox();
    if (!canvas) throw new Error('the grid has no canvas');
    return { x: canvas.x + offset.x, y: canvas.y + offset.y };
  }

  async clickCell(tab: string, a1: string): Promise<void> {
    const { x, y } = await this.placeOf(tab, a1);
    await this.page.mouse.click(x, y);
  }

  /** Puts the pointer on a cell and waits for the message it shows. */
  async hoverMessage(tab: string, a1: string): Promise<string> {
    const { x, y } = await this.placeOf(tab, a1);
    await this.page.mouse.move(x + 1, y + 1);
    await this.page.mouse.move(x, y);
    const popover = this.page.locator('.o-error-tooltip');
    await popover.waitFor({ timeout: 5000 });
    return (await popover.textContent()) ?? '';
  }

  /** Selects a cell, types, and leaves the editor with Enter. */
  async typeInto(tab: string, a1: string, text: string): Promise<void> {
    await this.startTyping(tab, a1, text);
    await this.page.keyboard.press('Enter');
  }

  /** Selects a cell and types, leaving the editor open. */
  async startTyping(tab: string, a1: string, text: string): Promise<void> {
    await this.clickCell(tab, a1);
    await this.page.keyboard.type(text, { delay: 10 });
  }

  value(tab: string, a1: string): Promise<unknown> {
    return this.read(tab, a1).then((cell) => cell.value);
  }
  /** The text that stands in the cell. */
  shown(tab: string, a1: string): Promise<string> {
    return this.read(tab, a1).then((cell) => cell.shown);
  }
  formula(tab: string, a1: string): Promise<string> {
    return this.read(tab, a1).then((cell) => cell.formula);
  }

  private read(tab: string, a1: string): Promise<{ value: unknown; shown: string; formula: string }> {
    return this.page.evaluate(
      ([name, text]) => {
        const { book } = window.sounderPreview.state;
        const { row, col } = book.engine.helpers.toCartesian(text!);
        const sheetId = book.idOf(name!);
        if (!sheetId) throw new Error(`no tab "${name}"`);
        const cell = book.cell(sheetId, row, col);
        return { value: cell.value, shown: cell.formattedValue, formula: book.formula(sheetId, row, col) };
      },
      [tab, a1],
    );
  }

  /** Names of the tabs, in order. */
  tabs(): Promise<string[]> {
    return this.page.evaluate(() => {
      const { book } = window.sounderPreview.state;
      return book.sheetIds().map((id) => book.nameOf(id));
    });
  }

  /** Chooses an entry of the script's menu. */
  async chooseMenu(menu: string, item: string): Promise<void> {
    await this.page.locator('#menus').getByRole('button', { name: menu }).click();
    await this.page.getByRole('menuitem', { name: item }).click();
  }

  /** The page in the sidebar. */
  get sidebar(): FrameLocator {
    return this.page.frameLocator('#sidebar iframe');
  }

  async screenshot(name: string): Promise<string> {
    mkdirSync(SHOTS, { recursive: true });
    const path = join(SHOTS, `${name}.png`);
    await this.page.screenshot({ path });
    return path;
  }
}
