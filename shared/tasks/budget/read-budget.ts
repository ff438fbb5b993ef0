/** Reads a budget that stands already: its settings, and the notes beside paddocks. */
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { rememberedList } from '../../lists/list-memory';
import { rowsBetween, textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { LOAD_HEADINGS, type LoadNotes } from './budget-block';
import { BUDGET_SETTINGS, type BudgetKey } from './budget-settings';

export interface BudgetRead {
  readonly settings: SettingsRead<BudgetKey>;
  readonly notes: LoadNotes;
  /** Whether it was made from the lists, not from the rotation table. */
  readonly isOfLists: boolean;
}

export function readBudget(block: BlockContent): BudgetRead {
  const rows = rowsBetween(block, LOAD_HEADINGS, 'Settings');
  const notes = rows.flatMap((row): [string, BlockCell][] => {
    const note = row.kept('Typed note');
    return note.k === 'blank' ? [] : [[textOf(row.kept('Paddock')), note]];
  });
  const isOfLists = (['paddocks', 'groups'] as const).some((kind) => rememberedList(block, kind));
  return { settings: readSettings(block, BUDGET_SETTINGS), notes: new Map(notes), isOfLists };
}
