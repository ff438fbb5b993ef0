/** The planner beside the page and on it: what the page does while it works, on farms with too little land. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { WireCell } from '../../shared/contract';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { launchBrowser } from '../browser/launch';
import { planned } from '../browser/planned';
import { farmSheet, PIG_HEADINGS } from './farm';
import { type Opened, openSidebar } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

/** The longest that the page may stand still, in ms: the design of this tool. */
const LONGEST_TASK_MS = 100;
const FIRST_DAY = '2026-05-02';

/** An invented farm of uneven paddocks in a row, each beside the next. */
function crowdedFarm(groups: number, paddocks: number, days: number) {
  const land: WireCell[][] = [['Field name', 'Size (acres)', 'Borders']];
  for (let p = 1; p <= paddocks; p++) {
    const beside = [p - 1, p + 1].filter((q) => q >= 1 && q <= paddocks).map((q) => `Field ${q}`);
    land.push([`Field ${p}`, 0.3 + ((p * 7) % 5) / 10, beside.join(', ')]);
  }
  const last = isoFromDay(dayFromIso(FIRST_DAY)! + days);
  const pigs: WireCell[][] = [PIG_HEADINGS];
  for (let g = 1; g <= groups; g++)
    pigs.push([`Herd ${g}`, 8 + g, 60 + g, { d: '2026-04-28' }, 0.9, { d: FIRST_DAY }, { d: last }]);
  return farmSheet(land, pigs);
}

/**
 * Runs something and gives the most processor time, in ms, that one task of the page's own thread took: the browser's
 * trace, since the clock on the wall counts other programs too.
 */
async function longestTask(page: Page, run: () => Promise<void>): Promise<number> {
  const engine = browser as Browser;
  await engine.startTracing(page, { categories: ['toplevel', 'disabled-by-default-devtools.timeline'] });
  let text: Buffer;
  try {
    await run();
  } finally {
    text = await engine.stopTracing();
  }
  const { traceEvents } = JSON.parse(text.toString()) as { traceEvents: TraceEvent[] };
  const main = new Set(
    traceEvents.filter(({ args }) => args?.name === 'CrRendererMain').map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = traceEvents.filter(
    ({ name, pid, tid, tdur }) => /RunTask$/.test(name) && main.has(`${pid} ${tid}`) && tdur !== undefined,
  );
  expect(tasks.length, 'tasks in the trace').toBeGreaterThan(50);
  return Math.max(...tasks.map(({ tdur }) => tdur! / 1000));
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread, in µs. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** A frame whose policy lets no worker start. */
function refuseByPolicy(): void {
  document.addEventListener('DOMContentLoaded', () => {
    const policy = document.createElement('meta');
    policy.httpEquiv = 'Content-Security-Policy';
    policy.content = "worker-src 'none'";
    document.head.append(policy);
  });
}

/** A browser that throws at once. */
function refuseByThrowing(): void {
  window.Worker = class {
    constructor() {
      throw new DOMException('Not here', 'SecurityError');
    }
  } as unknown as typeof Worker;
}

/** A worker that never says anything. */
function staySilent(): void {
  window.Worker = class extends EventTarget {
    postMessage(): void {}
    terminate(): void {}
  } as unknown as typeof Worker;
}

interface Watched extends Opened {
  /** Workers that the browser has started. */
  readonly started: () => number;
}

async function openPlan(sheet: ReturnType<typeof farmSheet>, before?: () => void): Promise<Watched> {
  let started = 0;
  const opened = await openSidebar(browser as Browser, sheet, {}, async (page: Page) => {
    if (before) await page.addInitScript(before);
    page.on('worker', () => {
      started += 1;
    });
  });
  await opened.page.getByRole('button', { name: 'Plan the moves' }).click();
  return { ...opened, started: () => started };
}

describe('the planner and the page', { timeout: 240_000 }, () => {
  test.each([
    ['in a worker', undefined, [2, 14, 180]],
    ['on the page, where the frame’s policy refuses a worker', refuseByPolicy, [2, 14, 180]],
    ['on the page, where the browser throws, a large farm', refuseByThrowing, [6, 50, 300]],
    ['on the page, where a worker stays silent', staySilent, [2, 14, 180]],
  ] as const)(
    '%s: a tight farm is planned and explained, and the page never stands still',
    async (_, before, [groups, paddocks, days]) => {
      if (!browser) return;
      const { page, errors, started } = await openPlan(crowdedFarm(groups, paddocks, days), before);
      await page.getByText(`${paddocks} paddocks read`).waitFor();
      await planned(page);
      const already = started();
      const longest = await longestTask(page, async () => {
        await page.getByLabel('Days of rest').fill('80');
        await page.getByText('Rest falls short on').first().waitFor({ timeout: 120_000 });
        await planned(page, 120_000);
      });
      expect(started() - already).toBe(before ? 0 : 1);
      expect(longest).toBeLessThanOrEqual(LONGEST_TASK_MS);
      expect(errors.filter((error) => !/Content Security Policy/.test(error))).toEqual([]);
    },
  );

  test.each([
    ['a worker', undefined],
    ['the page itself', refuseByThrowing],
  ])('%s can be stopped, and asked again', async (name, before) => {
    if (!browser) return;
    const { page } = await openPlan(crowdedFarm(5, 40, 300), before);
    await planned(page);
    const moves = page.locator('ol.next');
    const first = await moves.textContent();
    await page.getByLabel('Days of rest').fill('80');
    await page.getByText('Working it out…').first().waitFor();
    await page.getByRole('button', { name: 'Stop' }).first().waitFor();
    await page.screenshot({ path: `test-output/sidebar/planner-stop-${before ? 'page' : 'worker'}.png` });
    await page.getByRole('button', { name: 'Stop' }).first().click();
    await page.getByText('What follows is the old plan.').waitFor();
    expect(await page.getByText('Working it out…').count(), name).toBe(0);
    await expect.poll(() => page.workers(), { timeout: 10_000 }).toEqual([]);
    expect(await moves.textContent()).toBe(first);
    expect(await page.getByRole('button', { name: 'Write the table' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Work out the plan' }).click();
    await page
      .getByRole('button', { name: 'Write the table', disabled: false })
      .waitFor({ timeout: 120_000 });
  });

  test('typing starts one search after a pause, not one for each letter', async ({ skip }) => {
    if (!browser) skip();
    const { page, started } = await openPlan(farmSheet());
    await planned(page);
    expect(started()).toBe(1);
    await page.getByLabel('Days of rest').fill('');
    await page.getByLabel('Days of rest').pressSequentially('3535', { delay: 30 });
    await page.getByLabel('Days of rest').press('Backspace');
    await page.getByLabel('Days of rest').press('Backspace');
    await planned(page);
    expect(started()).toBe(2);
    // Back to what it was: what is known is shown at once.
    await page.getByLabel('Days of rest').fill('36');
    await page.getByLabel('Days of rest').fill('35');
    await planned(page);
    expect(started()).toBe(2);
  });
});
