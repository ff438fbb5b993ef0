/**
 * Right after a write Google may still show "Loading..." in cells of our functions and in what they spill (public
 * reports, see src/script/assumptions.ts). A block read then and written over later has not been changed by anybody.
 */
import { expect, it } from 'vitest';
import { cutBlock, wholeOf } from '../../shared/block/read-block';
import { blockFingerprint } from '../../shared/table/block-fingerprint';
import { openWorkbook, type Workbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { buildEveryBlock } from './every-block';
import { asked, readBook } from './rotation-task';

function fingerprints(workbook: Workbook): ReadonlyMap<string, string> {
  const { overview, tabs } = readBook(workbook);
  return new Map(
    overview.blocks.map((named) => {
      const tab = tabs.find(({ name }) => name === named.tab)!;
      const { row, column, rows, columns } = wholeOf(cutBlock(tab, named));
      const part = <Cell>(cells: readonly (readonly Cell[])[]): Cell[][] =>
        cells.slice(row - 1, row - 1 + rows).map((line) => line.slice(column - 1, column - 1 + columns));
      return [named.name, blockFingerprint(part(tab.values), part(tab.formulas))];
    }),
  );
}

function loading(workbook: Workbook): number {
  const { tabs } = readBook(workbook);
  return tabs.flatMap(({ values }) => values.flat()).filter((value) => value === 'Loading...').length;
}

// Issue 12, fault 12.
it('every block counts as unchanged, read while it calculates and read afterwards', async () => {
  const workbook = await openWorkbook({
    tabs: { Start: [] },
    codeJs: await scriptText(),
    today: '2026-04-20',
  });
  asked(workbook, 'startSample', { sample: 'feet-marrow-creek' });
  await buildEveryBlock(workbook, 'US');
  const after = fingerprints(workbook);
  expect(after.size).toBeGreaterThan(5);
  // Every cell with a function is written again, and shows no answer from now on.
  workbook.state.modes.loadingReads = Number.POSITIVE_INFINITY;
  for (const sheet of workbook.spreadsheet.getSheets()) {
    workbook.formulas(sheet.getName()).forEach((row, r) => {
      row.forEach((formula, c) => {
        if (formula !== '') sheet.getRange(r + 1, c + 1).setFormula(formula);
      });
    });
  }
  expect(loading(workbook)).toBeGreaterThan(50);
  expect(fingerprints(workbook)).toEqual(after);
}, 120_000);
