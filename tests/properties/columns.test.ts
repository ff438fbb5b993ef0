/** A call over a column gives, row by row, what the single calls give or the message that they throw. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../shared/catalogue';
import type { AnyEntry, Param } from '../../shared/catalogue/define';
import { call } from '../../shared/door/call';
import { UTC_EDGE } from '../cell';
import { anyCell, goodCell } from './plausible';

const repeats = (param: Param): boolean => !['list', 'corners', 'units'].includes(param.kind);

const isBlank = (cell: unknown): boolean => cell === '' || cell === null || cell === undefined;

/** What a single call shows in its cells: its answer as a row, or its message. */
function single(entry: AnyEntry, args: readonly unknown[]): readonly unknown[] {
  try {
    const answer = call(entry, args, UTC_EDGE);
    return Array.isArray(answer) ? (answer[0] ?? []) : [answer];
  } catch (error) {
    return [(error as Error).message];
  }
}

function withoutPadding(row: readonly unknown[]): readonly unknown[] {
  const last = row.reduce((at: number, cell, i) => (cell === '' ? at : i), 0);
  return row.slice(0, last + 1);
}

const IN_COLUMNS = CATALOGUE.filter((entry) => entry.result.kind !== 'lines' && entry.params.some(repeats));

describe('a column in one call', () => {
  it('covers all functions but those of lists only and TRAINING_PEN', () => {
    const left = CATALOGUE.filter((entry) => !IN_COLUMNS.includes(entry)).map(({ name }) => name);
    expect(left).toEqual(['BOUNDARY_LENGTH', 'BOUNDARY_AREA', 'TRAINING_PEN']);
  });

  it.each(IN_COLUMNS.map((entry) => [entry.name, entry] as const))('%s', (_, entry) => {
    const system = fc.constantFrom('US' as const, 'metric' as const);
    const rows = 7;
    const input = system.chain((units) =>
      fc.tuple(
        ...entry.params.map((param) => {
          const good = goodCell(param, units);
          if (!repeats(param)) return fc.record({ cells: fc.constant(undefined), one: good });
          const some = fc.oneof(
            { weight: 5, arbitrary: good },
            { weight: 1, arbitrary: fc.constant('') },
            { weight: 1, arbitrary: anyCell },
          );
          return fc.record({
            cells: fc.oneof(
              { weight: 3, arbitrary: fc.array(some, { minLength: rows, maxLength: rows }) },
              { weight: 1, arbitrary: fc.constant(undefined) },
            ),
            one: good,
          });
        }),
      ),
    );
    fc.assert(
      fc.property(input, (args) => {
        if (args.every(({ cells }) => cells === undefined)) return;
        const whole = args.map(({ cells, one }) => cells?.map((cell) => [cell]) ?? one);
        let column: unknown[][];
        try {
          column = call(entry, whole, UTC_EDGE) as unknown[][];
        } catch (error) {
          // Only a list can spoil the whole call: then it spoils every single one, in the same words.
          for (let r = 0; r < rows; r++) {
            expect(
              single(
                entry,
                args.map(({ cells, one }) => (cells ? cells[r] : one)),
              ),
            ).toBeDefined();
          }
          expect((error as Error).message).toMatch(/cover_left|liveweight_days/);
          return;
        }
        expect(column).toHaveLength(rows);
        column.forEach((row, r) => {
          const cells = args.map(({ cells: list, one }) => (list ? list[r] : one));
          const required = entry.params.flatMap((param, i) =>
            args[i]?.cells && !param.optional ? [isBlank(cells[i])] : [],
          );
          const isEmpty = required.length > 0 && required.every(Boolean);
          expect(withoutPadding(row)).toEqual(isEmpty ? [''] : withoutPadding(single(entry, cells)));
        });
      }),
      { numRuns: 120 },
    );
  });
});
