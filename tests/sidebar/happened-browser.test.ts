/**
 * A season in which about twenty things happen, each recorded through the sidebar in one file and typed in another: the
 * same table, and the days and rests of a ledger that is kept here by hand and knows no reader of ours.
 */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { launchBrowser } from '../browser/launch';
import { isoShown } from '../iso-shown';
import { withoutMemory } from '../without-memory';
import {
  clicker,
  openFarm,
  openRows,
  type Recorder,
  type Row,
  rowsOf,
  setToday,
  sheetOf,
  typist,
} from './happened-farm';
import { checkAndShoot, openSidebar, shootWindow } from './open-sidebar';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

const later = (iso: string, days: number): string => isoFromDay(dayFromIso(iso)! + days);

/** What the farm's people know: who went where and when, and how many there were. */
class Ledger {
  readonly stays: { readonly group: string; readonly paddock: string; readonly day: string }[] = [];
  readonly heads: { readonly group: string; readonly day: string; readonly head: number }[] = [
    { group: 'Reds', day: '2026-04-01', head: 10 },
    { group: 'Blacks', day: '2026-04-01', head: 8 },
  ];
  readonly gone = new Map<string, string>();

  moved(group: string, paddock: string, day: string): void {
    this.stays.push({ group, paddock, day });
  }

  /** The day a group left the paddock that it came to on a day; undefined where it is there still. */
  left(group: string, day: string): string | undefined {
    const next = this.stays
      .filter((stay) => stay.group === group && stay.day > day)
      .map((stay) => stay.day)
      .sort()[0];
    return next ?? this.gone.get(group);
  }

  headOn(group: string, day: string): number {
    return this.heads
      .filter((one) => one.group === group && one.day <= day)
      .sort((a, b) => (a.day < b.day ? 1 : -1))[0]!.head;
  }

  /** Head-days of each paddock, day by day, over the stays that have ended. */
  headDays(): Record<string, number> {
    const days: Record<string, number> = {};
    for (const { group, paddock, day } of this.stays) {
      const left = this.left(group, day);
      for (let on = day; left !== undefined && on < left; on = later(on, 1))
        days[paddock] = (days[paddock] ?? 0) + this.headOn(group, on);
    }
    return days;
  }

  /** Days since the paddock was left, when a group came; '' where nobody was there before. */
  rest(paddock: string, day: string): string {
    const lefts = this.stays
      .filter((stay) => stay.paddock === paddock && stay.day < day)
      .map((stay) => this.left(stay.group, stay.day)!)
      .sort();
    const last = lefts[lefts.length - 1];
    return last === undefined ? '' : String(dayFromIso(day)! - dayFromIso(last)!);
  }
}

test('a season, through the sidebar and by typing', async ({ skip }) => {
  if (!browser) skip();
  const [clicked, written] = [await openFarm(), await openFarm()];
  const opened = await openSidebar(browser as Browser, sheetOf(clicked));
  const { page } = opened;
  const click = clicker(page);
  const type = typist(written);
  const ledger = new Ledger();
  let today = '2026-04-01';
  let things = 0;
  let hasLog = false;
  const on = (day: string): void => {
    today = day;
    for (const book of [clicked, written]) setToday(book, day);
  };
  const both = async (what: string, doIt: (who: Recorder) => Promise<void>): Promise<void> => {
    things += 1;
    await doIt(click);
    await doIt(type);
    hasLog ||= what === 'the herd log begun';
    for (const tab of hasLog ? ['Rotation', 'Paddocks', 'Herd log'] : ['Rotation', 'Paddocks']) {
      // Days that we put into a list of the grower's show as ours do.
      const [one, other] = [clicked, written].map((book) =>
        withoutMemory(book.shownValues(tab)).map((row) => row.map(isoShown)),
      );
      expect(one, `${what}: ${tab}`).toEqual(other);
    }
  };
  const next = (group: string): Row => openRows(written, group)[0]!;
  const moved = async (group: string, day: string, paddock?: string): Promise<void> => {
    const move = next(group);
    await both(`${group} moved on ${day}`, (who) => who.moved(move, day, paddock));
    ledger.moved(group, paddock ?? move.paddock, day);
  };
  /** A paddock that nobody is in or will be soon. */
  const idle = (): string => {
    const soon = rowsOf(written).filter(
      ({ moved: day, planned, out }) => (day || planned) <= later(today, 6) && out >= later(today, -12),
    );
    const names = written
      .shownValues('Paddocks')
      .slice(1)
      .map(([name]) => name!);
    return names.find((name) => name !== '' && !soon.some(({ paddock }) => paddock === name))!;
  };
  const rebuild = () => both('built anew', (who) => who.rebuild());

  await shootWindow(opened, 'happened-home');
  await moved('Reds', today);
  await moved('Blacks', today);
  await checkAndShoot(opened, 'happened-cards');
  on(next('Reds').planned);
  await moved('Reds', today);
  on(later(next('Blacks').planned, 2));
  await moved('Blacks', later(today, -1));
  await rebuild();
  on(next('Reds').planned);
  await moved('Reds', today, idle());
  const left = rowsOf(written).find(
    ({ group, paddock }) => group === 'Reds' && paddock === ledger.stays[2]!.paddock,
  )!;
  await both('cover left', (who) => who.cover(left, 60));
  on(next('Blacks').planned);
  const skip1 = next('Blacks');
  await both('skipped', (who) => who.skipped(skip1));
  // What a record would change is shown before it is written.
  await page.getByRole('button', { name: 'A paddock is shut' }).click();
  await page.getByLabel('Paddock').selectOption(next('Reds').paddock);
  await page.getByText('Working out what changes…').waitFor({ state: 'hidden' });
  await checkAndShoot(opened, 'happened-shut-after-skipped');
  expect(await page.locator('.answer').textContent()).toContain(`instead of ${next('Reds').paddock}`);
  await rebuild();
  on(next('Blacks').planned > today ? next('Blacks').planned : today);
  await moved('Blacks', today);
  await both('the herd log begun', (who) => who.beginLog());
  await both('weighed', (who) => who.herd('Reds', today, '', '85', 'on the scale'));
  await rebuild();
  const late = next('Reds');
  on(late.planned);
  await both('not yet', (who) => who.notYet(late, later(today, 2)));
  await rebuild();
  on(next('Reds').planned);
  await moved('Reds', today);
  on(next('Blacks').planned);
  await both('sold', (who) => who.herd('Blacks', today, '6', '', 'two sold'));
  ledger.heads.push({ group: 'Blacks', day: today, head: 6 });
  await moved('Blacks', today);
  const shut = idle();
  await both('shut', (who) => who.shut(shut, today, later(today, 20)));
  await rebuild();
  // Nobody writes anything for a while.
  on(later(next('Reds').planned, 8));
  for (const group of ['Reds', 'Blacks'])
    for (const move of openRows(written, group).filter(({ planned }) => planned <= today))
      ledger.moved(group, move.paddock, move.planned);
  await both('all as planned', (who) => who.asPlanned());
  await rebuild();
  on(later(today, 1));
  const free = idle();
  await both('a move that nobody planned', (who) => who.unplanned('Reds', today, free));
  ledger.moved('Reds', free, today);
  await rebuild();
  on(next('Reds').planned);
  await both('one died', (who) => who.herd('Reds', today, '9', '', 'one died'));
  ledger.heads.push({ group: 'Reds', day: today, head: 9 });
  // A slip, taken back: the sidebar alone.
  const before = withoutMemory(clicked.shownValues('Rotation'));
  await click.skipped(next('Reds'));
  expect(withoutMemory(clicked.shownValues('Rotation'))).not.toEqual(before);
  await click.takeBack();
  expect(withoutMemory(clicked.shownValues('Rotation'))).toEqual(before);
  await moved('Reds', today);
  on(next('Blacks').planned);
  await moved('Blacks', today);
  await rebuild();
  on(next('Blacks').planned);
  await both('all gone', (who) => who.herd('Blacks', today, '0', '', 'sold'));
  ledger.gone.set('Blacks', today);
  await rebuild();
  on(next('Reds').planned);
  await moved('Reds', today);
  await rebuild();

  expect(things).toBeGreaterThan(25);
  // The table against the ledger: every stay that has begun, its days, heads and rest.
  const rows = rowsOf(clicked).filter(
    ({ moved: day, planned }) => day !== 'skipped' && (day || planned) <= today,
  );
  const stays = rows.map(
    ({ group, paddock, moved: day, planned }) => `${group} ${paddock} ${day || planned}`,
  );
  expect(stays.sort()).toEqual(
    ledger.stays.map(({ group, paddock, day }) => `${group} ${paddock} ${day}`).sort(),
  );
  const inTable: Record<string, number> = {};
  for (const { group, paddock, moved: typed, planned, out, head, rest } of rows) {
    const day = typed || planned;
    const gone = ledger.left(group, day);
    expect(rest, `rest of ${paddock} on ${day}`).toBe(ledger.rest(paddock, day));
    if (gone === undefined) continue;
    expect(out, `${group} in ${paddock} since ${day}`).toBe(gone);
    inTable[paddock] = (inTable[paddock] ?? 0) + head * (dayFromIso(out)! - dayFromIso(day)!);
  }
  expect(inTable).toEqual(ledger.headDays());
  expect(opened.errors).toEqual([]);
}, 900_000);
