import { describe, expect, test } from 'vitest';
import { countedAsDone, daysSet, goesAlong } from '../../shared/table/describe-typed';
import type { OldRow, PastRow } from '../../shared/table/model';
import { type TableRow, tableRows } from '../../shared/table/table-rows';

/** Day 0 is 1970-01-01. */
const row = (inDay: number, typed: Partial<OldRow> = {}): PastRow =>
  ({
    id: `#${inDay}`,
    group: 'Reds',
    paddock: 'Oak',
    inDay,
    outDay: inDay + 5,
    days: 5,
    typed: [],
    lookups: [],
    ...typed,
  }) as unknown as PastRow;
const move = (inDay: number, old: OldRow): TableRow => ({ inDay, old }) as unknown as TableRow;

describe('what is said of things typed into moves', () => {
  test('a note that goes to another day is named', () => {
    const note = row(10, { typed: ['note'] });
    expect(goesAlong([move(10, note)])).toEqual([]);
    expect(goesAlong([move(34, note)])).toEqual([
      'What was typed beside these moves goes along to another day: Reds, Oak on Sun 11 Jan (to Wed 4 Feb).',
    ]);
    expect(goesAlong([move(34, row(10))])).toEqual([]);
  });

  test('days that are set are named, at most four of them', () => {
    expect(daysSet([row(0)])).toEqual([]);
    const many = [0, 5, 10, 15, 20, 25].map((day) => ({ ...row(day), daysBefore: 7 }));
    expect(daysSet(many)[0]).toMatch(/Oak on Thu 1 Jan \(7 becomes 5\); .* and 2 more\.$/);
  });

  test('a stop without a day counts as done once, when it is past for the first time', () => {
    expect(countedAsDone([row(0, { movedIn: 0, isLive: true }), row(5)])).toEqual([]);
    expect(countedAsDone([row(5, { isLive: true })])[0]).toContain(
      'typed: Reds, Oak on Tue 6 Jan. Where a stop was left out',
    );
  });
});

describe('a note on the next stop of a group', () => {
  const problem = {
    groups: [{ name: 'Reds' }],
    paddocks: [{ name: 'Oak' }, { name: 'Elm' }],
    rules: { seasonStart: 20 },
  };
  const stays = (paddock: number) => ({ stays: [{ group: 0, paddock, inDay: 20, outDay: 25 }] });
  const overdue = row(17, { typed: ['note'] });
  const made = (paddock: number) =>
    tableRows({ problem, plan: stays(paddock), past: [], future: [overdue] } as never);

  test('stays with it where the stop comes later, and not with another that comes', () => {
    expect(made(0)[0]!.old).toBe(overdue);
    expect(made(1)[0]!.old).toBeUndefined();
    expect(made(1)[0]!.id).not.toBe(overdue.id);
  });

  // Typed over Oak, the day and the group say which move it was; the visits around it keep their own rows.
  test('and a paddock typed over it keep it that move', () => {
    const others = [row(25, { id: '#b', paddock: 'Elm' }), row(30, { id: '#c' })];
    const wish = row(20, { id: '#a', paddock: 'Elm', typed: ['paddock', 'note'] });
    const plan = {
      stays: [0, 1, 0].map((paddock, i) => ({ group: 0, paddock, inDay: 20 + 5 * i, outDay: 25 + 5 * i })),
    };
    const rows = tableRows({ problem, plan, past: [], future: [wish, ...others] } as never);
    expect(rows.map(({ id }) => id)).toEqual(['#a', '#b', '#c']);
  });
});
