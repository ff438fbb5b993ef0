import { describe, expect, test } from 'vitest';
import { countedAsDone, daysSet, goesAlong } from '../../shared/table/describe-typed';
import type { OldRow, PastRow } from '../../shared/table/model';
import { type TableRow, tableRows } from '../../shared/table/table-rows';
import { typedOverLine } from '../../shared/table/typed-over-line';

const cell = (value: string, formula = '') => ({ value, formula, sheetRow: 9 });
/** Day 0 is 1970-01-01. */
const row = (inDay: number, typed: Partial<OldRow> = {}): PastRow =>
  ({
    group: 'Reds',
    paddock: 'Oak',
    inDay,
    outDay: inDay + 5,
    days: 5,
    cover: cell(''),
    note: cell(''),
    extras: [],
    lookups: [],
    ...typed,
  }) as unknown as PastRow;
const move = (inDay: number, kept: OldRow): TableRow => ({ inDay, kept }) as unknown as TableRow;

describe('what is said of things typed into moves', () => {
  test('a note that goes to another day is named, a formula that counts anew is not', () => {
    const note = row(10, { note: cell('vet') });
    expect(goesAlong([move(10, note)])).toEqual([]);
    expect(goesAlong([move(34, note)])).toEqual([
      'What was typed beside these moves goes along to another day: Reds, Oak 1970-01-11 (to 1970-02-04).',
    ]);
    expect(goesAlong([move(34, row(10, { extras: [cell('7', '=E9+2')] }))])).toEqual([]);
  });

  test('days that are set are named, at most four of them', () => {
    expect(daysSet([row(0)])).toEqual([]);
    const many = [0, 5, 10, 15, 20, 25].map((day) => ({ ...row(day), daysBefore: 7 }));
    expect(daysSet(many)[0]).toMatch(/Oak 1970-01-01 \(7 becomes 5\); .* and 2 more\.$/);
  });

  test('a stop without a day counts as done once, when it is past for the first time', () => {
    expect(countedAsDone([row(0, { movedIn: 0, lookups: ['head'] }), row(5)])).toEqual([]);
    expect(countedAsDone([row(5, { lookups: ['head'] })])[0]).toContain(
      'typed: Reds, Oak 1970-01-06. Delete',
    );
  });
});

describe('a value where other moves have a lookup', () => {
  const lists = {
    groups: [{ name: 'Reds', head: 9, weightKg: 30, weighedOn: 0, from: 0 }],
    paddocks: [{ name: 'Oak', areaSquareMeters: 2100 }],
    rules: { rest: { kind: 'fixed', days: 30 } },
  } as never;
  const over = (figures: Partial<OldRow>): string[] => {
    const old = row(10, {
      typedOver: [
        { key: 'area', words: 'area 0.21', cell: { value: 0.21, formula: '', sheetRow: 10 }, stays: false },
      ],
      ...figures,
    });
    return typedOverLine(old, [old], lists);
  };

  // 2026-11: numbers kept as text in a list stand as values, and each was told as typed over a formula.
  test('that is what the list says was written by the builder', () => {
    expect(over({ areaSquareMeters: 2100 })).toEqual([]);
    expect(over({ areaSquareMeters: 4000 })[0]).toContain('area 0.21 typed over');
  });
});

describe('a note on the next stop of a group', () => {
  const problem = {
    groups: [{ name: 'Reds' }],
    paddocks: [{ name: 'Oak' }, { name: 'Elm' }],
    rules: { seasonStart: 20 },
  };
  const stays = (paddock: number) => ({ stays: [{ group: 0, paddock, inDay: 20, outDay: 25 }] });
  const overdue = row(17, { note: cell('vet') });
  const made = (paddock: number) =>
    tableRows({ problem, plan: stays(paddock), past: [], future: [overdue] } as never);

  test('stays with it where the stop comes later, and is kept as a line where another comes', () => {
    expect(made(0).rows[0]!.kept).toBe(overdue);
    expect(made(0).lost).toEqual([]);
    expect(made(1).rows[0]!.kept).toBeUndefined();
    expect(made(1).lost).toEqual([overdue]);
  });
});
