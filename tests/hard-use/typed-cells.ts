/**
 * Types into every cell of a table in memory and looks at what a rebuild makes of it: what was typed stands in the new
 * table, or the rebuild refuses and names it. Whatever else was typed in the table must not get lost with it either.
 */
import { cellA1 } from '../../shared/block/a1';
import { isFilled } from '../../shared/block/is-filled';
import type { BlockContent } from '../../shared/block/read-block';
import type { BlockCell, BlockStyle, WireCell } from '../../shared/contract';
import { withTyped } from './typed-spills';

export interface Composed {
  readonly cells: readonly (readonly BlockCell[])[];
  readonly styles: readonly (readonly BlockStyle[])[];
  /** Sentences that the page shows before the button is pressed. */
  readonly told?: readonly string[];
}
/** A table as it would be written, or what the page says instead. */
export type Rebuilt = Composed | { readonly refused: readonly string[] };

export interface TypedTask {
  readonly name: string;
  readonly content: BlockContent;
  /** "Read the spreadsheet again", then the button. */
  readonly rebuild: (changed: BlockContent) => Rebuilt | Promise<Rebuilt>;
  /** The table as it was built, where a rebuild without anything typed gives another. */
  readonly written?: Composed;
  /** What a cell is called in the lists of what may be lost; absent: what stands there. */
  readonly placeOf?: (row: number, column: number) => string;
}

export interface Typed {
  readonly kind: 'text' | 'number' | 'whole number' | 'formula' | 'cleared';
  readonly value: WireCell;
  readonly formula: string;
}
/** None of these stands in a table before. */
export const KINDS: readonly Typed[] = [
  { kind: 'text', value: 'mark 17', formula: '' },
  { kind: 'number', value: 7137.25, formula: '' },
  { kind: 'whole number', value: 7139, formula: '' },
  { kind: 'formula', value: 24, formula: '=SQRT(49)+17' },
  { kind: 'cleared', value: '', formula: '' },
];

export interface Verdict {
  readonly verdict: 'kept' | 'refused' | 'lost';
  readonly cell: string;
  /** "text over Oak": what was typed, and where. */
  readonly what: string;
  /** What went wrong. */
  readonly fault: string | undefined;
}

/** Every cell of the table, and each kind of thing typed into it. */
export async function tryEveryCell(
  task: TypedTask,
  kinds: readonly Typed['kind'][] = KINDS.map(({ kind }) => kind),
): Promise<readonly Verdict[]> {
  const base = task.written ?? (await composed(task, task.content));
  const inputs = inputsOf(task.content, base);
  const verdicts: Verdict[] = [];
  for (const [r, row] of task.content.values.entries()) {
    for (const c of row.keys()) {
      for (const typed of KINDS) {
        const { kind } = typed;
        if (kinds.includes(kind) && isWorthwhile(kind, isFilled(task.content, r, c), c))
          verdicts.push(await judged(task, base, inputs, [r, c], typed));
      }
    }
  }
  return verdicts;
}

/** A blank cannot be cleared; that a number is whole matters to settings and days only, which stand on the left. */
function isWorthwhile(kind: Typed['kind'], isFull: boolean, column: number): boolean {
  if (kind === 'whole number') return column > 0 && column < WHOLE_UP_TO;
  return kind !== 'cleared' || isFull;
}

const WHOLE_UP_TO = 5;

/** The table rebuilt; throws where it is not written. */
export async function composed(task: TypedTask, content: BlockContent): Promise<Composed> {
  const rebuilt = await task.rebuild(content);
  if ('refused' in rebuilt) throw new Error(`${task.name}: ${rebuilt.refused.join(' ')}`);
  return rebuilt;
}

type Place = readonly [row: number, column: number];

async function judged(
  task: TypedTask,
  base: Composed,
  inputs: readonly Input[],
  place: Place,
  typed: Typed,
): Promise<Verdict> {
  const { content } = task;
  const [row, column] = place;
  const changed = withTyped(content, base.cells, [{ row, column, ...typed }]);
  const rebuilt = await task.rebuild(changed);
  const fault =
    'refused' in rebuilt
      ? await unnamed(task, rebuilt, changed, place, typed)
      : missing(
          rebuilt,
          typed,
          inputs.filter((one) => !(one.row === row && one.column === column)),
        );
  const cell = cellA1(content.info.row + row, content.info.column + column);
  const was = content.formulas[row]![column] || JSON.stringify(content.values[row]![column]);
  const what = `${typed.kind} over ${task.placeOf?.(row, column) ?? was}`;
  const verdict = fault !== undefined ? 'lost' : 'refused' in rebuilt ? 'refused' : 'kept';
  return { verdict, cell, what, fault };
}

/** Does as the sentences say until they name the cell, or the table is written with what was typed in it. */
async function unnamed(
  task: TypedTask,
  first: Rebuilt,
  changed: BlockContent,
  place: Place,
  typed: Typed,
): Promise<string | undefined> {
  let now = changed;
  let rebuilt = first;
  for (;;) {
    if (!('refused' in rebuilt)) return missing(rebuilt, typed, []);
    if (isNamed(rebuilt.refused, now, place, typed)) return undefined;
    const next = withoutNamed(now, rebuilt.refused);
    if (next === undefined) return `not named: ${rebuilt.refused.join(' ')}`;
    now = next;
    rebuilt = await task.rebuild(now);
  }
}

/** The table without what the sentences name; undefined where they name nothing that is there. */
export function withoutNamed(content: BlockContent, sentences: readonly string[]): BlockContent | undefined {
  const named = new Set(sentences.join(' ').match(/(?<![A-Za-z0-9$])[A-Z]{1,2}\d+(?![0-9])/g));
  const { row, column } = content.info;
  const isStill = (r: number, c: number): boolean =>
    !(named.has(cellA1(row + r, column + c)) && isFilled(content, r, c));
  const less = <Cell>(grid: readonly (readonly Cell[])[]) =>
    grid.map((cells, r) => cells.map((cell, c) => (isStill(r, c) ? cell : '')));
  const isNothing = content.values.every((cells, r) => cells.every((_, c) => isStill(r, c)));
  return isNothing
    ? undefined
    : { ...content, values: less(content.values), formulas: less(content.formulas) };
}

/** The cell by its address, another cell of its row, or the very thing that was typed. A blank names nothing. */
export function isNamed(
  sentences: readonly string[],
  { info }: BlockContent,
  [row]: Place,
  { kind, value, formula }: Typed,
): boolean {
  const all = sentences.join(' ');
  if (kind === 'cleared') return all !== '';
  const inRow = new RegExp(`(?<![A-Za-z0-9$])[A-Z]{1,2}${info.row + row}(?![0-9])`);
  return inRow.test(all) || [formula || value, value].some((one) => all.includes(String(one)));
}

function missing({ cells, told = [] }: Composed, typed: Typed, inputs: readonly Input[]): string | undefined {
  const own = typed.formula === '' ? typed.value : typed.formula;
  const lines = [...told, ...cells.flat().map((cell) => (cell.k === 't' ? cell.v : ''))];
  const isThere =
    own === '' ||
    cells.flat().some((cell) => 'v' in cell && cell.v === own) ||
    lines.some((line) => line.includes(String(own)) || line.includes(`“${typed.value}”`));
  if (!isThere) return 'gone without a word';
  const left = new Set(cells.flat().map((cell) => keyOf('v' in cell ? cell.v : '')));
  const gone = inputs.find(({ key }) => !left.has(key) && !lines.some((line) => line.includes(key)));
  return gone && `${gone.key} elsewhere in the table is gone without a word`;
}

interface Input {
  readonly row: number;
  readonly column: number;
  readonly key: string;
}

/** What was typed in the table: values in cells that are there to be typed into. */
function inputsOf({ values, formulas }: BlockContent, base: Composed): readonly Input[] {
  return values.flatMap((cells, row) =>
    cells.flatMap((value, column) => {
      const isInput = base.styles[row]?.[column] === 'input' && formulas[row]![column] === '' && value !== '';
      return isInput ? [{ row, column, key: keyOf(value) }] : [];
    }),
  );
}

/** Digits that survive the way to metres and back. */
const SAFE_DIGITS = 9;

function keyOf(value: WireCell): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(SAFE_DIGITS)));
  return typeof value === 'object' ? value.d : String(value);
}
