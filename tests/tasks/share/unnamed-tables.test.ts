/** Tables of an earlier season have no name any more: they are told where a copy is cleared. Invented tabs. */
import { expect, it } from 'vitest';
import type { TabContent, WireCell } from '../../../shared/contract';
import { COLUMNS, headingOf } from '../../../shared/table/columns';
import { LOAD_HEADINGS } from '../../../shared/tasks/budget/budget-block';
import { unnamedTables } from '../../../shared/tasks/share/unnamed-tables';

const tab = (name: string, values: WireCell[][]): TabContent => ({
  name,
  values,
  formulas: values.map((row) => row.map(() => '')),
});
const MOVES = COLUMNS.map((column) => headingOf(column, 'metric'));

it('names tabs with tables of ours that have no name, and no others', () => {
  const tabs = [
    tab('Farm', [['Paddock', 'Area', 'Note']]),
    tab('Rotation', [['Moves of pigs'], [], MOVES]),
    tab('Rotation 2', [['Moves of pigs'], [], MOVES]),
    tab('Feed', [['', ''], [...LOAD_HEADINGS]]),
    tab('Season', [['Paddocks by week, 2026-04-01 to 2026-10-01']]),
  ];
  expect(unnamedTables(tabs, new Set(['Rotation 2']))).toEqual(['Rotation', 'Feed', 'Season']);
});
