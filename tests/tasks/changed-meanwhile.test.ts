/** Three ways meet: what the page read, what stands in the sheet now, and what is about to be written. */
import { describe, expect, test } from 'vitest';
import { BLANK, formula, number, text } from '../../shared/block/cells';
import type { BlockContent } from '../../shared/block/read-block';
import type { WireCell } from '../../shared/contract';
import { changedMeanwhile } from '../../shared/tasks/changed-meanwhile';
import { rebuildBlock } from '../../shared/tasks/rebuild-block';

const INFO = { name: 'SOUNDER_X', tab: 'Farm', row: 3, column: 2, rows: 3, columns: 3 };

function block(...values: WireCell[][]): BlockContent {
  return { info: INFO, values, formulas: values.map((row) => row.map(() => '')) };
}

const READ = block(['Settings', '', ''], ['Gap', 25, 'ft'], ['Limit', '', 'lb']);
const NEXT = [
  [text('Settings'), BLANK, BLANK],
  [text('Gap'), number(25), text('ft')],
  [text('Limit'), BLANK, text('lb')],
];

describe('what was changed in the sheet after the page had read it', () => {
  test('nothing, or what is written anyway, is no matter', () => {
    expect(changedMeanwhile(READ, READ, NEXT)).toEqual([]);
    const typed = block(['Settings', '', ''], ['Gap', 30, 'ft'], ['Limit', '', 'lb']);
    const same = [NEXT[0]!, [text('Gap'), number(30), text('ft')], NEXT[2]!];
    expect(changedMeanwhile(READ, typed, same)).toEqual([]);
    // The page changed it, the sheet did not.
    expect(changedMeanwhile(READ, READ, same)).toEqual([]);
  });

  test('a changed setting, a filled blank one and a new row are named', () => {
    const typed = block(['Settings', '', ''], ['Gap', 30, 'ft'], ['Limit', 170, 'lb'], ['Lane 9', 5, '']);
    expect(changedMeanwhile(READ, typed, NEXT)).toEqual(['C4', 'C5', 'B6']);
    const compose = () => ({
      cells: NEXT,
      styles: NEXT.map((row) => row.map(() => 'plain' as const)),
      rules: [],
      widths: [],
    });
    expect(() => rebuildBlock('SOUNDER_X', typed, compose, { asRead: READ })).toThrow(
      'changed in the sheet after the page had read it: C4, C5, B6.',
    );
  });

  test('rows may have moved, and a cell that a formula will fill is told elsewhere', () => {
    const moved = block(['', '', ''], ['Limit', '', 'lb'], ['Gap', 30, 'ft']);
    expect(changedMeanwhile(READ, moved, NEXT)).toEqual(['C5']);
    const filled = [NEXT[0]!, [text('Gap'), formula('=A1'), text('ft')], NEXT[2]!];
    expect(changedMeanwhile(READ, moved, filled)).toEqual([]);
  });
});
