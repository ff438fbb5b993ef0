import { cellOnTab } from '../../block/cell-on-tab';
import type { BlockCell } from '../../contract';
import { dayFromIso } from '../../core/calendar/day';
import { dayWords } from '../../core/calendar/day-words';
import type { FarmNow } from './farm-now';
import { type Happened, NotRecorded, type Typing, type What } from './happened';
import { herdTyped } from './herd-typed';
import { asPlannedTyped, coverTyped, movedTyped, notYetTyped, skippedTyped } from './moves-typed';
import { shutTyped } from './shut-typed';

const TYPED: Readonly<Record<What, (farm: FarmNow, happened: Happened) => Typing[]>> = {
  moved: movedTyped,
  skipped: skippedTyped,
  'not yet': notYetTyped,
  herd: herdTyped,
  cover: coverTyped,
  shut: shutTyped,
  'as planned': asPlannedTyped,
};

export type Read =
  | { readonly typed: readonly Typing[] }
  | { readonly problem: string; readonly field: keyof Happened | undefined };

/** The cells that something which has happened is typed into, as a person would type it; or what is wrong with it. */
export function typedFor(farm: FarmNow, happened: Happened): Read {
  try {
    return { typed: TYPED[happened.what](farm, happened) };
  } catch (error) {
    if (error instanceof NotRecorded) return { problem: error.message, field: error.field };
    throw error;
  }
}

/** "Moved in of Reds, Oak on Fri 8 May: Sat 9 May (Rotation!D9)". */
export function typingWords({ what, cell: { tab, row, column, before, after } }: Typing): string {
  const instead = before.k === 'blank' ? '' : ` instead of ${shown(before)}`;
  return `${what}: ${shown(after)}${instead} (${cellOnTab(tab, row, column)})`;
}

function shown(cell: BlockCell): string {
  if (!('v' in cell)) return 'blank';
  if (cell.k === 'd') return dayWords(dayFromIso(cell.v)!);
  if (cell.k !== 'n') return String(cell.v);
  return cell.format === '0%' ? `${Math.round(cell.v * 100)} %` : String(cell.v);
}
