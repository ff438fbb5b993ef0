/** Formulas of the grower's that point into a block of ours. */
import { describe, expect, it, test } from 'vitest';
import { pointingCells } from '../../shared/block/pointing-cells';
import { referencesIn } from '../../shared/block/references';
import type { BlockInfo, TabContent } from '../../shared/contract';

/** C11:I20. */
const INFO: BlockInfo = { name: 'SOUNDER_X', tab: 'Fences', row: 11, column: 3, rows: 10, columns: 7 };

/** A tab of formulas, every one in a column of its own. */
function tab(name: string, ...formulas: string[]): TabContent {
  return { name, values: [formulas.map(() => '')], formulas: [formulas] };
}

function rowsOf(formula: string, info = INFO, name = 'Sums'): number[][] {
  return pointingCells([tab(name, formula)], info, [info]).map(({ firstRow, lastRow }) => [
    firstRow,
    lastRow,
  ]);
}

describe('references in a formula', () => {
  const one = (formula: string) =>
    referencesIn(formula).map(({ tab: on, rows, columns }) => [on, ...rows, ...columns]);

  // Read by hand: tab, first and last row, first and last column.
  it.each([
    ['=C7', [[undefined, 7, 7, 3, 3]]],
    ['=$AA$12:B$9', [[undefined, 9, 12, 2, 27]]],
    [
      "='It''s A1'!$A$1:B9+Sums!D4",
      [
        ["It's A1", 1, 9, 1, 2],
        ['Sums', 4, 4, 4, 4],
      ],
    ],
    ['=SUM(G5:G)', [[undefined, 5, Number.POSITIVE_INFINITY, 7, 7]]],
    ['=SUM(G5:7)', [[undefined, 5, 7, 7, Number.POSITIVE_INFINITY]]],
    [
      '=SUM(A1:INDEX(B2:B9;3))',
      [
        [undefined, 1, 1, 1, 1],
        [undefined, 2, 9, 2, 2],
      ],
    ],
  ])('%s', (formula, references) => {
    expect(one(formula)).toEqual(references);
  });

  it.each([
    '=SUM(K:K)+SUM($5:7)',
    "=SUM('Plan A1'!K:K)+SUM(Q1!K:K)",
    '="C7 ""D8"" Fences!C7"',
    '=LOG10(2)+1E5+A1_total+XA1B+SEASON1+Q1.plan',
  ])('none in %s', (formula) => {
    expect(one(formula)).toEqual([]);
  });
});

describe('what points into a block', () => {
  it.each([
    ['=Fences!G20', [[20, 20]]],
    ['=fences!$G$20*2', [[20, 20]]],
    ["=SUM('Fences'!A1:D12)", [[11, 12]]],
    ['=SUM(Fences!I15:Z99)', [[15, 20]]],
    ['=SUM(Fences!G15:G)', [[15, 20]]],
    [
      '=Fences!C11-Fences!C13',
      [
        [11, 11],
        [13, 13],
      ],
    ],
  ])('%s', (formula, rows) => {
    expect(rowsOf(formula)).toEqual(rows);
  });

  it.each([
    '=Fences!G10+Fences!G21+Fences!B15+Fences!J15',
    '=G15',
    '=Other!G15&"Fences"',
    "='Old Fences'!G15+SUM(Fences!K:K;Fences!12:13)",
    '="Fences!G15"',
  ])('%s does not', (formula) => {
    expect(rowsOf(formula)).toEqual([]);
  });

  test('a tab whose name needs quotes', () => {
    const info = { ...INFO, tab: "Bea's fences" };
    expect(rowsOf("='Bea''s fences'!C12", info)).toEqual([[12, 12]]);
    expect(rowsOf("='Bea''s'!C12", info)).toEqual([]);
  });

  test('on the block’s own tab a reference needs no name, and formulas in tables of ours are left out', () => {
    const cells = Array.from({ length: 12 }, () => Array.from({ length: 12 }, () => ''));
    cells[0]![0] = '=C12'; // A1, outside
    cells[11]![2] = '=C13'; // C12, in the block
    cells[11]![9] = '=G12*2'; // J12, beside it
    cells[1]![11] = '=C14'; // L2, in another table of ours
    const other = { ...INFO, name: 'SOUNDER_Y', row: 1, column: 12, rows: 3, columns: 1 };
    const tabs = [
      { name: 'Fences', values: cells, formulas: cells },
      // L1 again: the other table's rectangle means nothing on this tab.
      tab('My sums', ...Array<string>(11).fill(''), '=Fences!C15'),
    ];
    expect(pointingCells(tabs, INFO, [INFO, other])).toEqual([
      { cell: 'Fences!A1', firstRow: 12, lastRow: 12, reachesRow: 12 },
      { cell: 'Fences!J12', firstRow: 12, lastRow: 12, reachesRow: 12 },
      { cell: "'My sums'!L1", firstRow: 15, lastRow: 15, reachesRow: 15 },
    ]);
  });

  test('how far a range reaches below the block is told', () => {
    const [closed, open] = pointingCells(
      [tab('Sums', '=SUM(Fences!G15:G30)', '=SUM(Fences!G15:G)')],
      INFO,
      [],
    );
    expect(closed).toEqual({ cell: 'Sums!A1', firstRow: 15, lastRow: 20, reachesRow: 30 });
    expect(open?.reachesRow).toBe(Number.POSITIVE_INFINITY);
  });
});
