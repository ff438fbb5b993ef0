/** Rows that the grower filled right below a block, and how many rows a table then has. */
import { describe, expect, it } from 'vitest';
import type { TabContent } from '../../shared/contract';
import { grownBlock } from '../../shared/tasks/merge/grown-block';
import { NEW_TABLE, roomToType } from '../../shared/tasks/room-to-type';

const INFO = { name: 'SOUNDER_FENCE_WALK', tab: 'Walk', row: 1, column: 2, rows: 2, columns: 3 };

/** One character a cell, "." for blank. */
function tab(...rows: string[]): TabContent {
  const values = rows.map((row) => [...row].map((cell) => (cell === '.' ? '' : cell)));
  return { name: 'Walk', values, formulas: values.map((row) => row.map(() => '')) };
}

describe('the rows right below a block', () => {
  it('are part of it down to the first that is blank or a line of words', () => {
    expect(grownBlock(tab('.abc', '.abc', '.abc', '...c', '.a..', '.abc'), INFO, () => [])).toEqual({
      info: { ...INFO, rows: 4 },
      below: 0,
      apart: 5,
    });
    expect(grownBlock(tab('.abc', '.abc', '....', 'a...', '.abc'), INFO, () => [])).toEqual({
      info: INFO,
      below: 2,
      apart: 5,
    });
    const far = [...Array<string>(21).fill('....'), '.abc'];
    expect(grownBlock(tab('.abc', '.abc', ...far), INFO, () => [])).toEqual({ info: INFO, below: 21 });
    expect(grownBlock(tab('.abc', '.abc'), INFO, () => [])).toEqual({
      info: INFO,
      below: Number.POSITIVE_INFINITY,
    });
  });

  it('are none where a list or another block stands', () => {
    const list = { name: 'groups', tab: 'Walk', row: 4, column: 4, rows: 2, columns: 2 };
    const content = tab('.abc.', '.abc.', '.abc.', '...pp', '...pp');
    expect(grownBlock(content, INFO, () => [list])).toEqual({ info: { ...INFO, rows: 3 }, below: 0 });
    expect(grownBlock(content, INFO, () => [{ ...list, column: 5 }]).info.rows).toBe(5);
    expect(grownBlock(content, INFO, () => [{ ...list, tab: 'Other' }]).info.rows).toBe(5);
  });
});

describe('the rows of a table', () => {
  it('stay while five are free, and are topped up as far as there is room', () => {
    expect(roomToType(0, 40, NEW_TABLE)).toBe(40);
    expect(roomToType(35, 40, { lines: 41, below: 0 })).toBe(40);
    expect(roomToType(36, 40, { lines: 41, below: 100 })).toBe(76);
    expect(roomToType(36, 40, { lines: 41, below: 3 })).toBe(43);
    // What was typed always has a row; whether there is one in the sheet, the script says.
    expect(roomToType(41, 40, { lines: 41, below: 0 })).toBe(41);
  });
});
