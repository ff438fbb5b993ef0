/** Reads a budget that stands already: its settings, and the notes beside paddocks. */
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { rowsBetween, textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { LOAD_HEADINGS, type LoadNotes } from './budget-block';
import { BUDGET_SETTINGS, type BudgetKey } from './budget-settings';

export interface BudgetRead {
  readonly settings: SettingsRead<BudgetKey>;
  readonly notes: LoadNotes;
}

export function readBudget(block: BlockContent): BudgetRead {
  const rows = rowsBetween(block, LOAD_HEADINGS, 'Settings');
  const notes = rows.flatMap((row): [string, BlockCell][] => {
    const note = row.kept('Typed note');
    return note.k === 'blank' ? [] : [[textOf(row.kept('Paddock')), note]];
  });
  return { settings: readSettings(block, BUDGET_SETTINGS), notes: new Map(notes) };
}
