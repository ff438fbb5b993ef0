/** A table of ours whose cells are gone is none, whatever its name still says. Issue 12, fault 5. */
import { describe, expect, it } from 'vitest';
import { allBlocks } from '../../shared/block/stamped-blocks';
import type { BlockInfo, TabContent } from '../../shared/contract';

const NAMED: BlockInfo = { name: 'SOUNDER_TEST', tab: 'Plan', row: 2, column: 2, rows: 2, columns: 2 };

function tab(name: string, values: TabContent['values'], formulas = values.map((row) => row.map(() => ''))) {
  return { name, values, formulas };
}

describe('a named area', () => {
  it('without a cell in it is no block: its tab blank, shorter, or with other things on it', () => {
    expect(allBlocks([NAMED], [])).toEqual([]);
    expect(allBlocks([NAMED], [tab('Plan', [['a note']])])).toEqual([]);
    expect(
      allBlocks(
        [NAMED],
        [
          tab('Plan', [
            ['a', 'note', ''],
            ['here', '', ''],
          ]),
        ],
      ),
    ).toEqual([]);
  });

  it('with a title or a memory of ours is one; what the grower put there instead is not', () => {
    const stamped = [[''], ['', 'Oats'], ['', 12, 'SOUNDER TEST 2 k3x9 | head m0ads']];
    expect(allBlocks([NAMED], [tab('Plan', stamped)])).toEqual([NAMED]);
    expect(allBlocks([NAMED], [tab('Plan', [[''], ['', 'Fence materials']])])).toEqual([NAMED]);
    expect(allBlocks([NAMED], [tab('Plan', [[''], ['', 'Paddock'], ['', 'North']])])).toEqual([]);
    expect(allBlocks([NAMED], [tab('Plan', [[''], ['', '', 'SOUNDER TEST 2 k3x9 | head m0ads']])])).toEqual(
      [],
    );
  });

  it('that was emptied does not hide the block of that kind that its memory tells of', () => {
    const stamped = tab('Other', [['Heading', 'SOUNDER TEST 2 k3x9 | head m0ads']]);
    expect(allBlocks([NAMED], [stamped])).toEqual([
      { name: 'SOUNDER_TEST', tab: 'Other', row: 1, column: 1, rows: 1, columns: 2 },
    ]);
  });
});
