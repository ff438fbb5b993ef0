/** Columns that the grower began right beside a block. */
import { describe, expect, it } from 'vitest';
import type { TabContent } from '../../shared/contract';
import { widenedBlock } from '../../shared/tasks/merge/widened-block';

const INFO = { name: 'SOUNDER_ROTATION', tab: 'Plan', row: 2, column: 1, rows: 3, columns: 2 };

/** One character a cell, "." for blank. */
function tab(...rows: string[]): TabContent {
  const values = rows.map((row) => [...row].map((cell) => (cell === '.' ? '' : cell)));
  return { name: 'Plan', values, formulas: values.map((row) => row.map(() => '')) };
}

describe('the columns right beside a block', () => {
  it('are part of it up to the first blank one, counted in its own rows only', () => {
    expect(widenedBlock(tab('xxxxx', 'ab...', 'abc..', 'ab.d.', '....e'), INFO, [])).toEqual({
      ...INFO,
      columns: 4,
    });
    expect(widenedBlock(tab('..x', 'ab.', 'ab.', 'ab.'), INFO, [])).toEqual(INFO);
  });

  it('what stands after a blank column is left', () => {
    expect(widenedBlock(tab('.....', 'ab...', 'ab..z', 'abc..'), INFO, [])).toEqual({ ...INFO, columns: 3 });
  });

  it('what belongs to a list or another block is not taken', () => {
    const list = { name: 'paddocks', tab: 'Plan', row: 1, column: 3, rows: 4, columns: 2 };
    const content = tab('..pp.', 'abpp.', 'abpp.', 'abpp.');
    expect(widenedBlock(content, INFO, [list])).toEqual(INFO);
    expect(widenedBlock(content, INFO, [{ ...list, tab: 'Other' }]).columns).toBe(4);
  });

  it('a formula counts as filled, also where it shows nothing', () => {
    const content = tab('...', 'ab.', 'ab.', 'ab.');
    const formulas = content.formulas.map((row, r) => row.map((_, c) => (r === 2 && c === 2 ? '=""' : '')));
    expect(widenedBlock({ ...content, formulas }, INFO, []).columns).toBe(3);
  });
});
