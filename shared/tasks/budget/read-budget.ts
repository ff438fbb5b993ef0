/** Reads a budget that stands already: its settings, and the notes beside paddocks. */
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { rememberedList } from '../../lists/list-memory';
import type { GroupList, PaddockList } from '../../lists/model';
import { rowsBetween, textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { LOAD_HEADINGS, type LoadNotes } from './budget-block';
import { BUDGET_SETTINGS, type BudgetKey } from './budget-settings';

export interface BudgetRead {
  readonly settings: SettingsRead<BudgetKey>;
  readonly notes: LoadNotes;
  /** The lists that the budget was made from, where it was made from lists. */
  readonly lists: { readonly paddocks?: PaddockList; readonly groups?: GroupList };
}

export function readBudget(block: BlockContent): BudgetRead {
  const rows = rowsBetween(block, LOAD_HEADINGS, 'Settings');
  const notes = rows.flatMap((row): [string, BlockCell][] => {
    const note = row.kept('Typed note');
    return note.k === 'blank' ? [] : [[textOf(row.kept('Paddock')), note]];
  });
  const [paddocks, groups] = [rememberedList(block, 'paddocks'), rememberedList(block, 'groups')];
  const lists = { ...(paddocks && { paddocks }), ...(groups && { groups }) };
  return { settings: readSettings(block, BUDGET_SETTINGS), notes: new Map(notes), lists };
}
