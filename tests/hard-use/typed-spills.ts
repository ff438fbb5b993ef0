/** What the sheet shows once something is typed into a cell: a function whose answers it stands in has no room. */
import { matchRows } from '../../shared/block/match-rows';
import type { BlockContent } from '../../shared/block/read-block';
import type { BlockCell, WireCell } from '../../shared/contract';

export interface Typing {
  /** From 0 in the block. */
  readonly row: number;
  readonly column: number;
  readonly value: WireCell;
  readonly formula: string;
}
type Cells = readonly (readonly BlockCell[])[];
interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** The content with some cells typed over; `written` is what the builder wrote there. */
export function withTyped(content: BlockContent, written: Cells, typed: readonly Typing[]): BlockContent {
  const values = content.values.map((row) => [...row]);
  const formulas = content.formulas.map((row) => [...row]);
  for (const area of answerAreas(content, written)) {
    const { row, column } = area;
    const stops = typed.some((one) => isIn(area, one.row, one.column));
    const isGone = typed.some((one) => one.row === row && one.column === column);
    if (!stops && !isGone) continue;
    for (let r = row; r < row + area.rows; r++) {
      for (let c = column; c < column + area.columns; c++) values[r]![c] = '';
    }
    if (!isGone) values[row]![column] = '#REF!';
  }
  for (const { row, column, value, formula } of typed) {
    values[row]![column] = value;
    formulas[row]![column] = formula;
  }
  const { memory } = content;
  const typedIn = { ...content, values, formulas };
  return memory ? { ...typedIn, memory: { ...memory, rows: matchRows({ ...typedIn, memory }) } } : typedIn;
}

/** Where the answers of the table's cell functions stand, each with its function's own cell. */
export function answerAreas({ values, formulas, info }: BlockContent, written: Cells): readonly Area[] {
  const isAnswer = (r: number, c: number): boolean =>
    written[r]?.[c]?.k === 'blank' && formulas[r]?.[c] === '' && (values[r]?.[c] ?? '') !== '';
  return formulas.flatMap((row, r) =>
    row.flatMap((formula, c): Area[] => {
      if (!/^=[A-Z]+_[A-Z_]+\(/.test(formula)) return [];
      const range = rangeOf(formula, info.row);
      const rows = range ? range.last - (info.row + r) + 1 : runOf((i) => i === 0 || isAnswer(r + i, c));
      const inRows = (column: number): boolean =>
        Array.from({ length: rows }, (_, i) => r + i).some((at) => isAnswer(at, column));
      return [{ row: r, column: c, rows, columns: runOf((i) => i === 0 || inRows(c + i)) }];
    }),
  );
}

/** Rows of the first range that a function is called with: it answers once for each. */
function rangeOf(formula: string, top: number): { last: number } | undefined {
  const match = /\$?[A-Z]+\$?(\d+):\$?[A-Z]+\$?(\d+)/.exec(formula);
  return match && Number(match[1]) >= top ? { last: Number(match[2]) } : undefined;
}

function runOf(holds: (i: number) => boolean): number {
  let length = 0;
  while (holds(length)) length++;
  return length;
}

function isIn(area: Area, row: number, column: number): boolean {
  const isOwn = row === area.row && column === area.column;
  const isDown = row >= area.row && row < area.row + area.rows;
  return !isOwn && isDown && column >= area.column && column < area.column + area.columns;
}
