/** Turns what a core function gives into cells, in the grower's unit, and lets nothing but finite numbers out. */
import type { CellValue, ColumnOut, ListLine, Result } from '../catalogue/define';
import { plainNumber, Refusal } from '../refusals';
import { QUANTITIES, symbolOf, type UnitSystem } from '../units/units';
import type { Outcome } from './run-with';

/** Inside value = cell value × factor + offset. */
interface Scale {
  readonly factor: number;
  readonly offset: number;
}

const AS_IT_IS: Scale = { factor: 1, offset: 0 };

export interface Presenter {
  /** The answer of a single call. */
  readonly whole: (outcome: Outcome) => CellValue | CellValue[][];
  /** The cells of one row of a range call. */
  readonly cells: (outcome: Outcome) => CellValue[];
  /** The number of a value result, unit converted. */
  readonly number: (value: number) => number;
  /** Cells that every row has at least. */
  readonly width: number;
}

/** How a result is shown under a unit system: made once a call, used for every row. */
export function presenterOf(result: Result, system: UnitSystem): Presenter {
  if (result.kind === 'lines') return linesPresenter(system);
  const scales = (result.kind === 'row' ? result.columns : [result]).map((column) => scaleOf(column, system));
  const [first = AS_IT_IS] = scales;
  const number = (value: number): number => shown(value, first);
  const cells = (outcome: Outcome): CellValue[] => {
    const numbers = outcome as readonly number[];
    const row = new Array<CellValue>(numbers.length);
    for (let i = 0; i < numbers.length; i++) row[i] = shown(numbers[i]!, scales[i] ?? first);
    return row;
  };
  const whole = (outcome: Outcome): CellValue | CellValue[][] =>
    typeof outcome === 'number' ? number(outcome) : [cells(outcome)];
  return { whole, cells, number, width: scales.length };
}

function linesPresenter(system: UnitSystem): Presenter {
  const line = ({ item, amount, quantity, unit }: ListLine): CellValue[] =>
    quantity
      ? [item, shown(amount, QUANTITIES[quantity][system]), symbolOf(quantity, system)]
      : [item, shown(amount, AS_IT_IS), unit ?? ''];
  const whole = (outcome: Outcome): CellValue[][] => (outcome as readonly ListLine[]).map(line);
  return { whole, cells: (outcome) => whole(outcome).flat(), number: (value) => value, width: 3 };
}

function scaleOf({ quantity }: ColumnOut, system: UnitSystem): Scale {
  return quantity ? QUANTITIES[quantity][system] : AS_IT_IS;
}

/**
 * Digits that a cell shows of a number. What the arithmetic leaves behind them (139.99999999999997 days, of which INT
 * makes 139) is no part of the answer.
 */
const CELL_DIGITS = 15;

function shown(inside: number, { factor, offset }: Scale): number {
  // Of −0 it makes 0, and of the largest numbers none that is finite.
  const value = Number(((inside - offset) / factor).toPrecision(CELL_DIGITS));
  if (Number.isFinite(value)) return value;
  throw new Refusal('the result', 'be a finite number: check the arguments', plainNumber(value));
}
