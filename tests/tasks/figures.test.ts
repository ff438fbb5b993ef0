/** Our tables as a person writes them: no figure shows more than 2 decimals, arithmetic is hidden. */
import { describe, expect, it } from 'vitest';
import { cellA1 } from '../../shared/block/a1';
import type { Overview } from '../../shared/contract';
import { HERD_TASK } from '../../shared/tasks/herd/herd-task';
import { TAB_LABEL } from '../../shared/tasks/place';
import { markTask } from '../../shared/tasks/share/mark-task';
import type { UnitSystem } from '../../shared/units/units';
import { openWorkbook, type Workbook } from '../../src/headless';
import { buildEveryBlock, write } from '../hard-use/every-block';
import { asked } from '../hard-use/rotation-task';
import { scriptText } from './script-text';

/** What is finer: degrees, the thickness of a wire, and a factor as it was published (Petherick and Baxter 1981). */
const FINER = ['latitude', 'longitude', 'Thickness', 'Thickness of it', 'Floor for a pig to lie on'];

async function everyTable(sample: string, units: UnitSystem): Promise<Workbook> {
  const workbook = await openWorkbook({
    tabs: { Start: [] },
    codeJs: await scriptText(),
    today: '2026-04-20',
  });
  asked(workbook, 'startSample', { sample });
  await buildEveryBlock(workbook, units);
  await write(workbook, HERD_TASK, { [TAB_LABEL]: 'Herd log' });
  await write(workbook, markTask('SOUNDER_ORIGINAL_ABC'), { [TAB_LABEL]: 'Mark' });
  return workbook;
}

/** A number that shows three digits or more after its decimal point; "1,312" is none. */
const FINE = /^-?[\d,]*\.\d{3,}$/;

/** "Pen B19: 5.333333333" for each fine number in sight; its label and the headings above it say what it is. */
function fineFigures(workbook: Workbook, tab: string): string[] {
  const sheet = workbook.spreadsheet.getSheetByName(tab)!;
  const values = workbook.values(tab);
  return workbook.shownValues(tab).flatMap((row, r) =>
    row.flatMap((shown, c) => {
      if (!FINE.test(shown) || sheet.isColumnHiddenByUser(c + 1)) return [];
      const isUnder = values.slice(0, r).some((above) => FINER.includes(String(above[c])));
      const isFiner = FINER.includes(String(row[0])) || (typeof values[r]?.[c] === 'number' && isUnder);
      return isFiner ? [] : [`${tab} ${cellA1(r + 1, c + 1)}: ${shown}`];
    }),
  );
}

/** Background of what the grower types. */
const TYPED = '#fff8e1';

/** Headings of the hidden columns; those that hold a cell to type into are told. */
function hidden(workbook: Workbook, tab: string): { headings: string[]; typed: string[] } {
  const range = workbook.spreadsheet.getSheetByName(tab)!.getDataRange();
  const [values, looks] = [range.getValues() as unknown[][], range.getBackgrounds()];
  const columns = values[0]!.flatMap((_, c) => (range.getSheet().isColumnHiddenByUser(c + 1) ? [c] : []));
  return {
    headings: columns.flatMap((c) => values.map((row) => String(row[c]))),
    typed: columns.flatMap((c) =>
      looks.flatMap((row, r) => (row[c] === TYPED ? [cellA1(r + 1, c + 1)] : [])),
    ),
  };
}

describe.each([
  ['feet-marrow-creek', 'US'],
  ['metric-larch-vale', 'metric'],
] as const)('every table on %s', (sample, units) => {
  it('shows no figure with more than 2 decimals, and hides arithmetic, never what is typed', {
    timeout: 120_000,
  }, async () => {
    const workbook = await everyTable(sample, units);
    const { blocks } = asked<Overview>(workbook, 'overview');
    const tabs = [...new Set(blocks.map(({ tab }) => tab))];
    expect(tabs.length).toBeGreaterThan(9);
    expect(tabs.flatMap((tab) => fineFigures(workbook, tab))).toEqual([]);
    expect(tabs.flatMap((tab) => hidden(workbook, tab).typed)).toEqual([]);
    const arithmetic = ['Ohms of it', 'Length ÷ 1000', 'Ohms, first', 'Ohms, second'];
    expect(hidden(workbook, 'Bite').headings).toEqual(expect.arrayContaining(arithmetic));
  });
});
