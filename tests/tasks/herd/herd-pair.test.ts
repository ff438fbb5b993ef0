/** What the formulas say of the herd log and what the planner takes from it: held against each other, random logs. */
import { expect, test } from 'vitest';
import { dayFromIso, isoFromDay } from '../../../shared/core/calendar/day';
import type { ReadGroup } from '../../../shared/lists/model';
import { herdOn, meanHead } from '../../../shared/plan/herd-on';
import { herdFormulas, herdInStay } from '../../../shared/table/herd-formulas';
import { boundHerd } from '../../../shared/tasks/herd/bound-herd';
import { HERD_BLOCK, type HerdEntry, herdBlock, herdRow } from '../../../shared/tasks/herd/herd-block';
import { readHerd } from '../../../shared/tasks/herd/read-herd';
import { withHerd } from '../../../shared/tasks/herd/with-herd';
import { openWorkbook } from '../../../src/headless';
import { scriptText } from '../script-text';
import { readAsWritten, writeInSheet } from '../sheet-block';

const START = dayFromIso('2026-03-01')!;
const DAYS = 60;
/** Names that a criterion could read as a pattern, and one with spaces around. */
const NAMES = ['Reds', '>5 Pigs*', ' Late  boys '];
const LISTED = { head: 30, weightKg: 20, weighedOn: START - 10 };

/** Numbers from 0 up to below 1, the same at every run (Park and Miller's generator, Comm. ACM 31:1192, 1988). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

function randomLog(random: () => number): HerdEntry[] {
  return Array.from({ length: 25 }, () => {
    const kind = random();
    return {
      group: NAMES[Math.floor(random() * NAMES.length)]!,
      // Few days: several rows fall on one.
      day: START + Math.floor(random() * 20) * 3,
      ...(kind < 0.7 && { head: Math.floor(random() * 30) }),
      ...(kind > 0.4 && { weightKg: 20 + Math.floor(random() * 100) }),
    };
  });
}

/** The log on a tab of its own, and a tab with these headings to ask it from. */
async function logInSheet(entries: readonly HerdEntry[], headings: string[], locale: string) {
  const tabs = { Ask: [headings] };
  const book = await openWorkbook({ tabs, codeJs: await scriptText(), locale, today: '2026-03-01' });
  const rows = entries.map((entry) => herdRow(entry, '', 'metric'));
  const block = herdBlock(rows, 'metric', { row: 1, column: 1 });
  const info = writeInSheet(book, HERD_BLOCK, block, { at: 'new-tab', tab: 'Herd' });
  const content = readAsWritten(book, info);
  const listed = NAMES.map((name): ReadGroup => ({ name, ...LISTED, cells: {} }));
  return { book, log: boundHerd(content)!, groups: withHerd(listed, readHerd(content)).groups };
}

/** As the rotation table writes it. */
function keyOf(g: number): string {
  return `k${NAMES[g]!.replace(/\*/g, '·')}`;
}

function serial(day: number): number {
  return Math.round((Date.parse(isoFromDay(day)) - Date.parse('1899-12-30')) / 86_400_000);
}

test.each([
  [7, 'en_US'],
  [11, 'de_DE'],
])('random log %i (%s)', async (seed, locale) => {
  const random = randomFrom(seed);
  const headings = ['Key', 'Day', 'Head', 'Weight', 'Weighed'];
  const { book, log, groups } = await logInSheet(randomLog(random), headings, locale);
  const asked = Array.from({ length: 120 }, () => ({
    g: Math.floor(random() * NAMES.length),
    day: START - 3 + Math.floor(random() * (DAYS + 6)),
  }));
  const cells = asked.map(({ g, day }, i) => {
    const { head, weight, weighedOn } = herdFormulas(log, `$A${i + 2}`, `$B${i + 2}`);
    return [
      keyOf(g),
      serial(day),
      `=${head(String(LISTED.head))}`,
      `=${weight(String(LISTED.weightKg))}`,
      `=$B${i + 2}-(${weighedOn(String(serial(LISTED.weighedOn)))})`,
    ];
  });
  book.range('Ask', `A2:E${asked.length + 1}`).setValues(cells);
  const got = book.values('Ask').slice(1);
  expect(new Set(got.map((row) => row[2])).size).toBeGreaterThan(5);
  for (const [i, { g, day }] of asked.entries()) {
    const { head, weightKg, weighedOn } = herdOn(groups[g]!, day);
    const [, , headThere, weightThere, since] = got[i]!;
    const what = `${NAMES[g]} on ${isoFromDay(day)}`;
    expect(headThere, what).toBe(head);
    expect(weightThere, what).toBeCloseTo(weightKg, 5);
    expect(since, what).toBe(day - weighedOn);
  }
});

test.each([
  [5, 'en_US'],
  [23, 'de_DE'],
])('head-days of stays, random log %i (%s): a ledger kept day by day', async (seed, locale) => {
  const random = randomFrom(seed);
  const entries = randomLog(random);
  const headings = ['Key', 'In', 'Out', 'Days', 'Head', 'Mean', 'Most', 'Says'];
  const { book, log, groups } = await logInSheet(entries, headings, locale);
  // The ledger goes through the typed rows themselves, a day at a time.
  const headOn = (g: number, day: number): number => {
    const own = entries.filter(
      ({ group, head, day: on }) => group === NAMES[g] && head !== undefined && on <= day,
    );
    const last = Math.max(...own.map(({ day: on }) => on));
    const heads = own.filter(({ day: on }) => on === last).map(({ head }) => head!);
    return own.length === 0 ? LISTED.head : Math.max(...heads);
  };
  const asked = Array.from({ length: 60 }, () => ({
    g: Math.floor(random() * NAMES.length),
    inDay: START - 12 + Math.floor(random() * DAYS),
    days: 1 + Math.floor(random() * 14),
  }));
  const cells = asked.map(({ g, inDay, days }, i) => {
    const r = i + 2;
    const stay = { key: `$A${r}`, inDay: `$B${r}`, out: `$C${r}`, days: `$D${r}`, head: `$E${r}` };
    const { mean, most, says } = herdInStay(log, stay);
    return [keyOf(g), serial(inDay), serial(inDay + days), days, headOn(g, inDay), mean, most, says];
  });
  book.range('Ask', `A2:H${asked.length + 1}`).setValues(cells);
  const got = book.values('Ask').slice(1);
  let changed = 0;
  for (const [i, { g, inDay, days }] of asked.entries()) {
    const ledger = Array.from({ length: days }, (_, d) => headOn(g, inDay + d));
    const headDays = ledger.reduce((sum, head) => sum + head, 0);
    const what = `${NAMES[g]} from ${isoFromDay(inDay)} for ${days} days`;
    expect(Number(got[i]![5]) * days, what).toBeCloseTo(headDays, 6);
    expect(got[i]![6], what).toBe(Math.max(...ledger));
    expect(meanHead(groups[g]!, inDay, inDay + days) * days, what).toBeCloseTo(headDays, 6);
    const last = ledger[days - 1];
    if (last === ledger[0]) continue;
    changed += 1;
    expect(got[i]![7], what).toMatch(new RegExp(`^${last} head from \\d+ (Feb|Mar|Apr|May)`));
  }
  expect(changed).toBeGreaterThan(10);
});
