/**
 * The one door through which every cell function is called.
 *
 * It tells blanks, text, errors and ranges apart, converts units, checks limits, repeats single values against
 * ranges, runs the core row by row, converts the answer back and refuses in words. A single call throws, so
 * that the cell shows the message; in a range the message stands in its own cell and the other rows answer.
 */
import type { AnyEntry, CellValue, ListLine, Param } from '../catalogue/define';
import { Refusal } from '../refusals';
import { fromInside, QUANTITIES, symbolOf, type UnitSystem } from '../units/units';
import type { Edge } from './edge';
import { isBlank, readBoolean, readChoice, readDate, readNumber, readUnits } from './read-cell';
import { readCorners, readLists } from './read-list';

export type Answer = CellValue | CellValue[][];
type Row = readonly unknown[];

/** An argument made ready: one value for all rows, or the cells of a range to be read row by row. */
interface Ready {
  readonly param: Param;
  readonly value: unknown;
  readonly cells: readonly Row[] | undefined;
  /** Cell value × factor + offset = inside value; the quick way for number cells. */
  readonly factor: number;
  readonly offset: number;
}

/** Calls a catalogue entry with cell arguments. Throws an Error whose message is the sentence for the cell. */
export function call(entry: AnyEntry, args: readonly unknown[], edge: Edge): Answer {
  let system: UnitSystem = 'US';
  try {
    system = unitSystem(entry, args);
    const ready = makeReady(entry, args, system, edge);
    const shape = rangeShape(entry, ready);
    if (!shape) return present(entry, runOnce(entry, ready), system);
    return runRows(entry, ready, shape, system, edge);
  } catch (error) {
    throw new Error(sentence(error, entry, system));
  }
}

function sentence(error: unknown, entry: AnyEntry, system: UnitSystem): string {
  if (error instanceof Refusal) return error.sentence(entry.name, system);
  throw error;
}

function unitSystem(entry: AnyEntry, args: readonly unknown[]): UnitSystem {
  const at = entry.params.findIndex((param) => param.kind === 'units');
  return at < 0 ? 'US' : readUnits(unwrap(args[at]));
}

/** A range of one cell counts as that cell. */
function unwrap(arg: unknown): unknown {
  if (!Array.isArray(arg)) return arg;
  if (arg.length === 0) return undefined;
  if (arg.length !== 1) return arg;
  const row: unknown = arg[0];
  if (!Array.isArray(row)) return row;
  return row.length === 1 ? row[0] : arg;
}

function makeReady(entry: AnyEntry, args: readonly unknown[], system: UnitSystem, edge: Edge): Ready[] {
  const lists = readLists(entry.params, args, system);
  return entry.params.map((param, i) => {
    const whole = { param, cells: undefined, factor: 1, offset: 0 };
    if (param.kind === 'units') return { ...whole, value: system };
    if (param.kind === 'list') return { ...whole, value: lists.get(i) };
    if (param.kind === 'corners') return { ...whole, value: readCorners(param.name, args[i]) };
    const arg = unwrap(args[i]);
    if (Array.isArray(arg)) return readyRange(param, arg as Row[], system);
    return { ...whole, value: readArgument(param, arg, system, edge) };
  });
}

function readyRange(param: Param, cells: readonly Row[], system: UnitSystem): Ready {
  const rows = cells.map((row) => (Array.isArray(row) ? row : [row]));
  const unit = param.kind === 'number' && param.quantity ? QUANTITIES[param.quantity][system] : undefined;
  return { param, value: undefined, cells: rows, factor: unit?.factor ?? 1, offset: unit?.offset ?? 0 };
}

/** A single argument: its value, its default where blank, or a refusal. */
function readArgument(param: Param, cell: unknown, system: UnitSystem, edge: Edge): unknown {
  if (isBlank(cell)) {
    const filled = defaultOf(param, system);
    if (filled === undefined && !param.optional) throw new Refusal(param.name, 'be given', 'a blank');
    return filled;
  }
  switch (param.kind) {
    case 'number':
      return readNumber(param, cell, system);
    case 'choice':
      return readChoice(param, cell);
    case 'boolean':
      return readBoolean(param, cell);
    case 'date':
      return readDate(param, cell, edge);
    default:
      return undefined;
  }
}

function defaultOf(param: Param, system: UnitSystem): unknown {
  if (param.kind === 'boolean') return param.default;
  if (param.kind !== 'number' || param.default === undefined) return undefined;
  const typed = typeof param.default === 'number' ? param.default : param.default[system];
  return readNumber(param, typed, system);
}

interface Shape {
  readonly rows: number;
  readonly columns: number;
}

function rangeShape(entry: AnyEntry, ready: readonly Ready[]): Shape | undefined {
  const ranges = ready.filter((arg) => arg.cells !== undefined);
  const [first] = ranges;
  if (!first) return undefined;
  const shape = shapeOf(first);
  for (const other of ranges) {
    const { rows, columns } = shapeOf(other);
    if (rows !== shape.rows || columns !== shape.columns || isRagged(other, columns)) {
      throw new Refusal(
        other.param.name,
        `have the same shape as ${first.param.name} (${shape.rows} × ${shape.columns})`,
        `${rows} × ${columns}`,
      );
    }
  }
  const { kind } = entry.result;
  if (kind === 'lines')
    throw new Refusal(first.param.name, 'be a single value', `a range of ${shape.rows} × ${shape.columns}`);
  if (kind !== 'value' && shape.columns !== 1) {
    throw new Refusal(
      first.param.name,
      'be one column, because the answer takes several cells a row',
      `${shape.columns} columns`,
    );
  }
  return shape;
}

function shapeOf({ cells }: Ready): Shape {
  return { rows: cells?.length ?? 0, columns: cells?.[0]?.length ?? 0 };
}

function isRagged({ cells }: Ready, columns: number): boolean {
  return cells?.some((row) => row.length !== columns) ?? false;
}

type Outcome = number | readonly number[] | readonly ListLine[];
type Run = (...values: unknown[]) => Outcome;

function runOnce(entry: AnyEntry, ready: readonly Ready[]): Outcome {
  return checked((entry.run as Run)(...ready.map((arg) => arg.value)));
}

function checked(outcome: Outcome): Outcome {
  const numbers = typeof outcome === 'number' ? [outcome] : outcome;
  for (const item of numbers) {
    const value = typeof item === 'number' ? item : item.amount;
    if (!Number.isFinite(value)) {
      throw new Refusal('the result', 'be a finite number: check the arguments', String(value));
    }
  }
  return outcome;
}

/** Row by row over a range. Written for speed: one values array, no closures inside the loop. */
function runRows(
  entry: AnyEntry,
  ready: readonly Ready[],
  shape: Shape,
  system: UnitSystem,
  edge: Edge,
): CellValue[][] {
  const values = ready.map((arg) => arg.value);
  const ranged = ready.flatMap((arg, i) => (arg.cells ? [{ arg, i, cells: arg.cells }] : []));
  const required = ranged.filter(({ arg }) => isRequired(arg.param));
  const run = entry.run as Run;
  const out: CellValue[][] = [];
  for (let r = 0; r < shape.rows; r++) {
    const row: CellValue[] = [];
    for (let c = 0; c < shape.columns; c++) {
      if (required.length > 0 && allBlank(required, r, c)) {
        row.push('');
        continue;
      }
      try {
        for (const { arg, i, cells } of ranged) values[i] = readInRow(arg, cells[r]?.[c], system, edge);
        pushOutcome(row, entry, run(...values), system);
      } catch (error) {
        row.push(sentence(error, entry, system));
      }
    }
    out.push(row);
  }
  return entry.result.kind === 'value' ? out : padded(entry, out);
}

function isRequired(param: Param): boolean {
  return !param.optional && !('default' in param && param.default !== undefined);
}

function allBlank(required: readonly { cells: readonly Row[] }[], r: number, c: number): boolean {
  for (const { cells } of required) if (!isBlank(cells[r]?.[c])) return false;
  return true;
}

function readInRow(arg: Ready, cell: unknown, system: UnitSystem, edge: Edge): unknown {
  const { param } = arg;
  if (param.kind === 'number' && typeof cell === 'number') {
    const inside = cell * arg.factor + arg.offset;
    const fits =
      (param.above === undefined || inside > param.above) &&
      (param.min === undefined || inside >= param.min) &&
      (param.max === undefined || inside <= param.max) &&
      !param.whole;
    if (fits && Number.isFinite(inside)) return inside;
  }
  return readArgument(param, cell, system, edge);
}

function pushOutcome(row: CellValue[], entry: AnyEntry, outcome: Outcome, system: UnitSystem): void {
  if (typeof outcome !== 'number') {
    checked(outcome);
    row.push(...rowCells(entry, outcome as readonly number[], system));
    return;
  }
  if (!Number.isFinite(outcome)) checked(outcome);
  const { result } = entry;
  row.push(
    result.kind === 'value' && result.quantity ? fromInside(outcome, result.quantity, system) : outcome,
  );
}

/** Rows that hold a message or a blank, or an open row that is short, are filled up so that all are equally long. */
function padded(entry: AnyEntry, rows: CellValue[][]): CellValue[][] {
  const wanted = entry.result.kind === 'row' ? entry.result.columns.length : 1;
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), wanted);
  return rows.map((row) =>
    row.length < width ? [...row, ...new Array<string>(width - row.length).fill('')] : row,
  );
}

function present(entry: AnyEntry, outcome: Outcome, system: UnitSystem): Answer {
  const { result } = entry;
  if (typeof outcome === 'number') {
    return result.kind === 'value' && result.quantity
      ? fromInside(outcome, result.quantity, system)
      : outcome;
  }
  if (result.kind === 'lines') return (outcome as readonly ListLine[]).map((line) => lineCells(line, system));
  return [rowCells(entry, outcome as readonly number[], system)];
}

function rowCells(entry: AnyEntry, numbers: readonly number[], system: UnitSystem): CellValue[] {
  const { result } = entry;
  return numbers.map((value, i) => {
    const column = result.kind === 'row' ? result.columns[i] : result;
    const quantity = column && 'quantity' in column ? column.quantity : undefined;
    return quantity ? fromInside(value, quantity, system) : value;
  });
}

function lineCells(line: ListLine, system: UnitSystem): CellValue[] {
  const value = line.quantity ? fromInside(line.amount, line.quantity, system) : line.amount;
  return [line.item, value, line.quantity ? symbolOf(line.quantity, system) : (line.unit ?? '')];
}
