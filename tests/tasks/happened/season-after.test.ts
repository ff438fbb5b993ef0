/** What is shown before something is recorded is what the plan is made from afterwards. */
import { expect, test, vi } from 'vitest';
import { isoFromDay } from '../../../shared/core/calendar/day';
import type { Plan, Stay } from '../../../shared/plan/model';
import { planRotation } from '../../../shared/plan/plan-rotation';
import { describeMoves, movesToCome } from '../../../shared/table/describe-changes';
import { REST_STAYS } from '../../../shared/table/words';
import { type FarmNow, farmNow } from '../../../shared/tasks/happened/farm-now';
import type { Happened } from '../../../shared/tasks/happened/happened';
import { record } from '../../../shared/tasks/happened/record';
import { seasonAfter } from '../../../shared/tasks/happened/season-after';
import { typedFor } from '../../../shared/tasks/happened/typed-for';
import { HERD_TASK } from '../../../shared/tasks/herd/herd-task';
import { portOf, runTask, type Workbook } from '../../../src/headless';
import { buildRotation, readBook } from '../../hard-use/rotation-task';
import { openFarm, setToday } from '../../sidebar/happened-farm';
import { withoutMemory } from '../../without-memory';

vi.setConfig({ testTimeout: 120_000 });

function nowOf(book: Workbook): FarmNow {
  const now = farmNow(readBook(book));
  if ('missing' in now) throw new Error(now.missing.join());
  return now;
}

function planOf(season: ReturnType<typeof seasonAfter>) {
  if (!('problem' in season) || !season.rebuild) throw new Error(JSON.stringify(season));
  const plan = planRotation(season.problem) as Plan;
  return {
    plan,
    problem: season.problem,
    changes: describeMoves(season.rebuild, plan),
    notes: season.rebuild.notes,
  };
}

/** A season of which the first moves are recorded, on the day of the Reds' second move. */
async function begun(): Promise<{ book: Workbook; next: FarmNow['cards'][number]['next'] & object }> {
  const book = await openFarm('2026-05-25');
  await runTask(portOf(book), HERD_TASK);
  await record(portOf(book), { what: 'as planned' });
  const [reds] = nowOf(book).cards;
  setToday(book, isoFromDay(reds!.moves[1]!.inDay!));
  await record(portOf(book), { what: 'as planned' });
  await buildRotation(book);
  const { next } = nowOf(book).cards[0]!;
  setToday(book, isoFromDay(next!.inDay!));
  return { book, next: next! };
}

const REDS = { group: 'Reds' } as const;

test.each<readonly [string, (next: { id: string; inDay?: number }, day: (n: number) => string) => Happened]>([
  ['moved', ({ id }, day) => ({ what: 'moved', ...REDS, move: id, day: day(0) })],
  ['moved early', ({ id }, day) => ({ what: 'moved', ...REDS, move: id, day: day(-1) })],
  ['another paddock', ({ id }, day) => ({ what: 'moved', ...REDS, move: id, day: day(0), paddock: 'Far' })],
  ['not in the plan', (_, day) => ({ what: 'moved', ...REDS, move: '', day: day(-1), paddock: 'Far' })],
  ['skipped', ({ id }) => ({ what: 'skipped', ...REDS, move: id })],
  ['not yet', ({ id }, day) => ({ what: 'not yet', ...REDS, move: id, day: day(3) })],
  ['sold', (_, day) => ({ what: 'herd', ...REDS, day: day(2), head: '4' })],
  ['all gone', (_, day) => ({ what: 'herd', ...REDS, day: day(10), head: '0', allGone: true })],
  ['shut', (_, day) => ({ what: 'shut', paddock: 'Hill', day: day(0), until: day(30) })],
  ['shut between', (_, day) => ({ what: 'shut', paddock: 'Long', day: day(28), until: day(33) })],
])('%s', async (what, thing) => {
  const { book, next } = await begun();
  const day = (n: number): string => isoFromDay(next.inDay! + n);
  const happened = thing(next, day);
  const farm = nowOf(book);
  const read = typedFor(farm, happened);
  const cells = 'typed' in read ? read.typed.map(({ cell }) => cell) : [];
  const shown = planOf(seasonAfter(farm, cells));
  await record(portOf(book), happened, cells);
  const after = planOf(seasonAfter(nowOf(book), []));
  expect(shown.plan).toEqual(after.plan);
  expect(shown.changes).toEqual(after.changes);
  expect(shown.notes).toEqual(after.notes);
  const reds = after.plan.stays.filter(({ group }) => group === 0);
  const nameOf = (p: number): string => after.problem.paddocks[p]!.name;
  if (what === 'not yet') {
    // The stay before ends on the new day, although that is longer than the longest one; built anew, it stays so.
    expect(isoFromDay(reds[0]!.outDay)).toBe(day(3));
    await buildRotation(book);
    expect(isoFromDay(nowOf(book).cards[0]!.next!.inDay!)).toBe(day(3));
    await buildRotation(book);
    expect(isoFromDay(nowOf(book).cards[0]!.next!.inDay!)).toBe(day(3));
  }
  if (what === 'skipped') {
    // Nobody goes in on the days of that stay.
    const until = next.inDay! + next.days!;
    expect(
      after.plan.stays.filter(({ paddock, inDay }) => nameOf(paddock) === next.paddock && inDay < until),
    ).toEqual([]);
    await buildRotation(book);
    const shownRows = withoutMemory(book.shownValues('Rotation')).filter((row) => row[3] === 'skipped');
    expect(shownRows.map((row) => row.slice(0, 5))).toEqual([
      ['Reds', next.paddock, expect.any(String), 'skipped', String(next.days)],
    ]);
    // Built once more it stands there still, once.
    await buildRotation(book);
    expect(withoutMemory(book.shownValues('Rotation')).filter((row) => row[3] === 'skipped')).toEqual(
      shownRows,
    );
  }
  if (what === 'all gone') expect(Math.max(...reds.map(({ outDay }) => outDay))).toBe(next.inDay! + 10);
  if (what === 'shut between') {
    // Planned were stays of days 6 to 12 and 30 to 36: the first stays.
    const inLong = after.plan.stays.filter(({ paddock }) => nameOf(paddock) === 'Long');
    const isOver = ({ outDay }: Stay): boolean => outDay <= next.inDay! + 28;
    expect(inLong.some(isOver)).toBe(true);
    expect(inLong.filter((stay) => !isOver(stay) && stay.inDay <= next.inDay! + 33)).toEqual([]);
  }
  if (what === 'shut')
    expect(
      after.plan.stays.filter((stay) => nameOf(stay.paddock) === 'Hill' && stay.inDay <= next.inDay! + 30),
    ).toEqual([]);
});

test('a record that changes nothing of the plan says so, whatever was recorded before it', async () => {
  const { book, next } = await begun();
  const moved = {
    what: 'moved',
    ...REDS,
    move: next.id,
    day: isoFromDay(next.inDay!),
    paddock: 'Far',
  } as const;
  await record(portOf(book), moved);
  const farm = nowOf(book);
  const older = seasonAfter(farm, []);
  expect(planOf(older).changes).not.toEqual([REST_STAYS]);
  const cover = typedFor(farm, { what: 'cover', ...REDS, move: farm.cards[0]!.at!.id, cover: '60' });
  const season = seasonAfter(farm, 'typed' in cover ? cover.typed.map(({ cell }) => cell) : []);
  if (!('rebuild' in season && season.rebuild && 'rebuild' in older && older.rebuild))
    throw new Error('no season');
  const before = movesToCome(older.rebuild, planOf(older).plan);
  expect(describeMoves(season.rebuild, planOf(season).plan, before)).toEqual([REST_STAYS]);
});
