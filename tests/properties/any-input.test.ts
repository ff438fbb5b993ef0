/**
 * Any input at all gives a finite number, text, TRUE or FALSE, or a rectangular array of those, or throws an Error
 * whose message begins with the function's name; and it never is a fault of the function itself.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../shared/catalogue';
import type { AnyEntry } from '../../shared/catalogue/define';
import { call } from '../../shared/door/call';
import { UTC_EDGE } from '../cell';
import { anyArgument, anyCell, goodCell } from './plausible';

function expectCell(cell: unknown): void {
  if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
  else expect(['string', 'boolean']).toContain(typeof cell);
}

function expectSheetValue(answer: unknown): void {
  if (!Array.isArray(answer)) {
    expectCell(answer);
    return;
  }
  expect(answer.length).toBeGreaterThan(0);
  const width = (answer[0] as unknown[]).length;
  expect(width).toBeGreaterThan(0);
  for (const row of answer as unknown[][]) {
    expect(row.length).toBe(width);
    row.forEach(expectCell);
  }
}

function expectHonest({ name }: AnyEntry, run: () => unknown): void {
  let answer: unknown;
  try {
    answer = run();
  } catch (error) {
    expect(error).toBeInstanceOf(Error);
    const { message } = error as Error;
    expect(message.startsWith(`${name}: `), message).toBe(true);
    expect(message).not.toMatch(/fault in the function|undefined|NaN|\[object/);
    return;
  }
  expectSheetValue(answer);
  expect(JSON.stringify(answer)).not.toMatch(/fault in the function/);
}

describe('any input at all', () => {
  it.each(CATALOGUE.map((entry) => [entry.name, entry] as const))('%s', (_, entry) => {
    const count = entry.params.length;
    fc.assert(
      fc.property(fc.array(anyArgument, { maxLength: count + 1 }), (args) => {
        expectHonest(entry, () => call(entry, args, UTC_EDGE));
      }),
      { numRuns: 150 },
    );
  });
});

describe('good arguments with one or two of them spoilt', () => {
  it.each(CATALOGUE.map((entry) => [entry.name, entry] as const))('%s', (_, entry) => {
    const args = fc.tuple(
      ...entry.params.map((param) =>
        fc.oneof(
          {
            weight: 4,
            arbitrary: fc.constantFrom('US', 'metric').chain((s) => goodCell(param, s as 'US' | 'metric')),
          },
          { weight: 1, arbitrary: anyCell },
          { weight: 1, arbitrary: anyArgument },
        ),
      ),
    );
    fc.assert(
      fc.property(args, (cells) => {
        expectHonest(entry, () => call(entry, cells, UTC_EDGE));
      }),
      { numRuns: 150 },
    );
  });
});
