/** One argument of the form: typed, or taken from cells. */
import { quotedTab } from '../../../../shared/block/a1';
import type { Selection, WireCell } from '../../../../shared/contract';
import { readTyped } from '../../../../shared/locale/read-typed';
import { parseReference } from './reference';

export type Argument =
  | { readonly from: 'typed'; readonly text: string }
  /** `reference` as it goes into the formula; `cells` as they were when read. */
  | { readonly from: 'cells'; readonly reference: string; readonly cells: readonly (readonly WireCell[])[] };

export const BLANK: Argument = { from: 'typed', text: '' };

/** The selected cells as an argument. The tab always stands in front: the formula may go to another tab. */
export function fromSelection(selection: Selection): Argument {
  return {
    from: 'cells',
    reference: `${quotedTab(selection.tab)}!${bareA1(selection.a1)}`,
    cells: selection.values,
  };
}

/** The part behind the tab's name, where there is one. */
function bareA1(a1: string): string {
  return a1.slice(a1.lastIndexOf('!') + 1);
}

export function isBlankArgument(argument: Argument): boolean {
  return argument.from === 'typed' && argument.text.trim() === '';
}

/** Typed text that names cells, which must be read before there is an answer. */
export function typedReference(argument: Argument): string | undefined {
  if (argument.from !== 'typed' || !parseReference(argument.text)) return undefined;
  return argument.text.trim();
}

/** What the door gets: dates as ISO text, blanks as ''. */
export function callValue(argument: Argument, comma: boolean): unknown {
  if (argument.from === 'cells') {
    const cells = argument.cells.map((row) => row.map(doorCell));
    return cells.length === 1 && cells[0]?.length === 1 ? cells[0][0] : cells;
  }
  const typed = readTyped(argument.text, comma);
  return 'problem' in typed ? argument.text : typed.value;
}

function doorCell(cell: WireCell): unknown {
  return typeof cell === 'object' ? cell.d : cell;
}
