import { alignColumns, markAt } from '../../block/align-columns';
import { SETTING_ID } from '../../block/compose-block';
import type { ComposedBlock } from '../../block/composed-block';
import { marksStanding } from '../../block/marks-standing';
import { ANSWER_MARK, bareMark, isLeftOver, isYours, markOfCell, markOfStanding } from '../../block/memory';
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { nameKey } from '../../lists/read-list-cell';
import { shiftFormula } from '../../table/shift-formula';
import { keptCell } from '../kept-cell';
import { answersIn } from './answers-in';
import type { ColumnPlaces } from './column-places';
import { KEPT_ID } from './rows-below';
import { type StandingCell as Cell, isNothing, type Stay } from './standing-cell';

/** Puts what was typed into its place in `want`; gives what has none, and what was kept where something of ours stood. */
export function keepTyped(
  old: BlockContent,
  want: ComposedBlock,
  rows: readonly (number | undefined)[],
  placeOf: ColumnPlaces['placeOf'],
  putBack: boolean,
) {
  const cells = want.cells.map((row) => [...row]);
  const kept = new Set<BlockCell>();
  const inPlace: Stay[] = [];
  const loose: Cell[] = [];
  const columns = alignColumns(old);
  const isAnswered = answersIn(old);
  const marks = marksStanding(old);
  // What the new block holds beside what stands in its place already.
  const wanted = want.cells.map((row) => row.map(markOfCell));
  const spare = countedMarks(want.records ? [] : wanted);
  for (const [r, row] of old.values.entries()) {
    const memory = old.memory?.rows[r];
    const isOwn = old.memory && memory !== undefined && !isLeftOver(old.memory, memory);
    const at = rows[r];
    if (isOwn && at === undefined && isTakenAway(old, r)) continue;
    const isHeld = !want.records || (memory?.id.startsWith(KEPT_ID) ?? false);
    for (const [c, value] of row.entries()) {
      const cell: Cell = { row: r, column: c, value, formula: old.formulas[r]?.[c] ?? '' };
      const written = columns[c];
      const to = written === undefined ? undefined : placeOf(r, written);
      const mark = written === undefined ? undefined : memory?.marks[written];
      const now = at === undefined || to === undefined ? undefined : want.cells[at]?.[to];
      const standing = marks[r]![c]!;
      const isWanted = now !== undefined && wanted[at!]![to!] === standing;
      if (isWanted) take(spare, standing);
      const isRoom = mark === ANSWER_MARK || (now?.k === 'blank' && now.answer === true);
      if (isNothing(cell) || isAnswered(r, c)) continue;
      const isTyped = mark === undefined || bareMark(mark) !== standing;
      if (!isTyped && !(isHeld && isYours(mark))) continue;
      if (now === undefined || mark === undefined || isRoom) loose.push(cell);
      else {
        const end = settle({ ...want, cells }, kept, [at!, to!], cell, { mark, isTyped, isWanted, putBack });
        if (end === 'in place of ours') inPlace.push([cell, at!, to!]);
        else if (end === 'gives way') loose.push(cell);
      }
    }
  }
  return {
    inPlace,
    left: loose.filter(({ value, formula }) => !take(spare, markOfStanding(value, formula))),
    cells,
    kept,
  };
}

/**
 * A row that begins with a cell of the grower's, or a setting, in which nothing was typed since it was written, and
 * that the new block does not have: taken away on the page, and meant.
 */
function isTakenAway(block: BlockContent, r: number): boolean {
  const { id = KEPT_ID, marks = [] } = block.memory?.rows[r] ?? {};
  const isAsWritten = (standing: string, c: number): boolean => {
    const mark = markAt(block, r, c) ?? '';
    return mark === ANSWER_MARK || bareMark(mark) === standing;
  };
  const isOnPage = id.startsWith(SETTING_ID) || (isYours(marks[0] ?? '') && !id.startsWith(KEPT_ID));
  return isOnPage && marksStanding(block)[r]!.every(isAsWritten);
}

interface Marked {
  readonly mark: string;
  readonly isTyped: boolean;
  /** The new block holds the same there. */
  readonly isWanted: boolean;
  readonly putBack: boolean;
}

/** Settles what stands in a cell that the new block has too. */
function settle(
  { cells, styles }: ComposedBlock,
  keptCells: Set<BlockCell>,
  [row, column]: readonly [row: number, column: number],
  cell: Cell,
  { mark, isTyped, isWanted, putBack }: Marked,
): 'stays' | 'in place of ours' | 'gives way' {
  const now = cells[row]![column]!;
  const stays = keptCell(cell.value, shiftFormula(cell.formula, row - cell.row));
  const from = [cell.row, cell.column] as [number, number];
  const put = (kept: BlockCell): void => {
    const cell = {
      ...('format' in now && now.format && 'format' in kept ? { format: now.format } : {}),
      ...kept,
      from,
    };
    cells[row]![column] = cell;
    keptCells.add(cell);
  };
  if (isWanted) {
    if (now.k !== 'f') put(now);
    return 'stays';
  }
  if (!isTyped) return now.k === 'blank' ? 'gives way' : 'stays';
  // A formula that shows what is to be written stays that formula.
  if (cell.formula !== '' && markOfCell(now) === markOfStanding(cell.value, '')) {
    put(stays);
    return 'stays';
  }
  if (styles[row]?.[column] !== 'input') {
    if (!putBack) put(stays);
    return 'in place of ours';
  }
  // Our own word in capitals or with spaces around it is that word.
  if (now.k === 't' && cell.formula === '' && nameKey(String(cell.value)) === nameKey(now.v)) {
    put(now);
    return 'stays';
  }
  const isUnaware = now.k === 'blank' || markOfCell(now) === bareMark(mark);
  if (!isUnaware) return 'gives way';
  put(stays);
  return 'stays';
}

function countedMarks(marks: readonly (readonly string[])[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const mark of marks.flat()) counts.set(mark, (counts.get(mark) ?? 0) + 1);
  return counts;
}

/** Takes one of that mark out of those that are counted; false where none is left. */
function take(counts: Map<string, number>, mark: string): boolean {
  const count = counts.get(mark) ?? 0;
  counts.set(mark, count - 1);
  return count > 0;
}
