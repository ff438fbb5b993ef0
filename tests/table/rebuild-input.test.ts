/** What a rebuild hands to the planner, from rows written by hand: no sheet, no engine. */
import { describe, expect, it } from 'vitest';
import { dayWords } from '../../shared/core/calendar/day-words';
import type { OldRotation, OldRow } from '../../shared/table/model';
import { rebuildInput } from '../../shared/table/rebuild-input';
import { tableRows } from '../../shared/table/table-rows';
import { AWKWARD_FARMS } from '../plan/awkward-farms';
import { checkPlan } from '../plan/check-plan';
import { soonPlanned } from '../soon-planned';

const { problem } = AWKWARD_FARMS.hayField!;
const start = problem.rules.seasonStart;
const group = problem.groups[0]!;

function row(paddock: number, inDay: number, isTyped: boolean): OldRow {
  return {
    sheetRow: 5 + paddock,
    group: group.name,
    paddock: problem.paddocks[paddock]!.name,
    plannedIn: inDay,
    ...(isTyped ? { movedIn: inDay } : {}),
    inDay,
    days: 7,
    id: `#${paddock}`,
    typed: [],
    lookups: [],
  };
}

const OLD: OldRotation = {
  settings: undefined,
  // The second came in two days late, so paddock 4 was left on day 9; the third is planned only.
  rows: [row(4, start, true), row(1, start + 9, true), row(2, start + 16, false)],
  skipped: [],
  problems: [],
};
const lastUsed = (rebuilt: typeof problem) => rebuilt.paddocks.map((paddock) => paddock.lastUsed);

describe('rebuildInput', () => {
  it('a group in a paddock that left the list has no day there twice: the stay ends when it comes in anew', () => {
    const today = start + 12;
    const fewer = problem.paddocks.filter((_, p) => p !== 1);
    const { past, problem: rest, notes } = rebuildInput(OLD, { ...problem, paddocks: fewer, today });
    expect(rest.groups[0]!.standing).toBeUndefined();
    // In on day 9, planned for 7 days, out on day 12.
    expect(past.map(({ inDay, outDay, days }) => [inDay - start, outDay - start, days])).toEqual([
      [0, 9, 9],
      [9, 12, 3],
    ]);
    expect(notes.join()).toContain(`its stay there ends on ${dayWords(today)}`);
  });

  it('stands where the last real move led, and knows when each paddock was left', () => {
    const { problem: rest } = rebuildInput(OLD, { ...problem, today: start + 12 });
    expect(rest.groups[0]!.standing).toEqual({ paddock: 1, since: start + 9 });
    expect(lastUsed(rest)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      start + 9,
      undefined,
      undefined,
    ]);
    expect(rest.rules.seasonStart).toBe(start + 12);
  });

  it('plans the rest of the season lawfully, from there on', () => {
    const { problem: rest } = rebuildInput(OLD, { ...problem, today: start + 12 });
    const plan = soonPlanned(rest);
    if (!('stays' in plan)) throw new Error(plan.reason);
    expect(checkPlan(rest, plan.stays).faults).toEqual([]);
    expect(plan.stays[0]).toMatchObject({ paddock: 1, inDay: start + 9 });
    expect(plan.stays[0]!.outDay).toBeGreaterThanOrEqual(start + 12);
  });

  // 2026-11: the paddock of a group that had left the rotation counted as never used, and needed no rest.
  it('lets a group that is gone stand nowhere, its paddock left on its last day', () => {
    const groups = [{ ...group, until: start + 11 }];
    const { problem: rest, past } = rebuildInput(OLD, { ...problem, groups, today: start + 12 });
    expect(rest.groups[0]!.standing).toBeUndefined();
    expect(rest.paddocks[1]!.lastUsed).toBe(start + 11);
    expect(past.map(({ outDay }) => outDay)).toEqual([start + 9, start + 11]);
    expect(soonPlanned(rest)).toMatchObject({ stays: [] });
  });

  it('says that a group under another name leaves its past without figures', () => {
    const groups = [{ ...group, name: 'Renamed' }];
    const { notes } = rebuildInput(OLD, { ...problem, groups, today: start + 12 });
    const first = `${group.name}, ${problem.paddocks[4]!.name} on ${dayWords(start)}`;
    expect(notes).toContainEqual(
      `“${group.name}” is not in your lists, and head, weight or area is missing in ${first} and 1 more move. Where it has another name now, write that name into the table before you write it anew, or these figures stay blank.`,
    );
  });

  it('says that a paddock under another name counts as no use', () => {
    const paddocks = problem.paddocks.map((paddock, at) =>
      at === 4 ? { ...paddock, name: 'Renamed' } : paddock,
    );
    const { notes } = rebuildInput(OLD, { ...problem, paddocks, today: start + 12 });
    const old = problem.paddocks[4]!.name;
    expect(notes).toContainEqual(
      `“${old}” (row 9, until ${dayWords(start + 9)}) is not in the paddock list, so its stays count as no use of any paddock. Where it is a paddock of the list under another name, write the name as in the list.`,
    );
  });

  it('says that a group must wait where another one’s day is typed ahead', () => {
    const late = { ...group, name: 'Late', from: start + 10 };
    const groups = [group, late];
    const notes = (today: number) => rebuildInput(OLD, { ...problem, groups, today }).notes.join();
    expect(notes(start + 9)).not.toContain('Late has no place');
    const ahead = { ...OLD, rows: [...OLD.rows.slice(0, 2), { ...row(2, start + 16, true) }] };
    expect(rebuildInput(ahead, { ...problem, groups, today: start + 9 }).notes).toContainEqual(
      `Late has no place from ${dayWords(start + 10)} to ${dayWords(start + 16)}: a day moved in is typed ahead, and the plan begins on it. Clear that day, or give the group a place until then.`,
    );
  });

  it('writes the planned day of moves that are counted as done, so that they are known again', () => {
    const counted = rebuildInput(OLD, { ...problem, today: start + 20, countPlannedAsDone: true });
    expect(counted.past.map(({ movedIn }) => movedIn)).toEqual([start, start + 9, start + 16]);
    const plain = rebuildInput(OLD, { ...problem, today: start + 20 });
    expect(plain.past).toHaveLength(2);
  });

  it('keeps a cover seen in a move that was due off every stay to come', () => {
    const rows = [...OLD.rows.slice(0, 2), { ...row(2, start + 16, false), cover: 0.7 }];
    const again = rebuildInput({ ...OLD, rows }, { ...problem, today: start + 20 });
    const plan = soonPlanned(again.problem);
    if (!('stays' in plan)) throw new Error(plan.reason);
    expect(tableRows({ ...again, plan }).filter(({ id }) => id === rows[2]!.id)).toEqual([]);
  });

  it('hands on as wishes what was typed over the plan of moves to come', () => {
    const rows = [
      ...OLD.rows.slice(0, 2),
      { ...row(2, start + 16, false), days: 4, typed: ['days', 'note'] as const },
      { ...row(3, start + 20, false), typed: ['paddock'] as const },
      row(5, start + 25, false),
    ];
    expect(rebuildInput({ ...OLD, rows }, { ...problem, today: start + 12 }).problem.wishes).toEqual([
      { group: 0, day: start + 16, days: 4 },
      { group: 0, day: start + 20, paddock: 3 },
    ]);
  });

  it('changes nothing before the first real move', () => {
    const { problem: rest } = rebuildInput({ ...OLD, rows: [] }, { ...problem, today: start - 5 });
    expect(rest).toEqual(problem);
  });
});
