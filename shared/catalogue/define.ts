/**
 * The shape of a catalogue entry: the one place where a cell function is declared.
 *
 * From an entry come the cell stub with its JSDoc, the README row, the sidebar's help and form, the door's
 * checks and a test per example. `define` derives the argument types of `run` from `params`, so that a text
 * argument in front of a number is a compile error.
 */

import type { Day } from '../core/calendar/day';
import type { Corner } from '../core/fence/corner';
import type { ListLine } from '../core/list-line';
import type { Certainty, SourceId } from '../sources';
import type { Quantity, UnitSystem } from '../units/units';

export type { ListLine };

export interface SourceUse {
  readonly source: SourceId;
  readonly certainty: Certainty;
  /** What of the function rests on it. */
  readonly covers: string;
  /** Figures among it that no published check guards, as `npm run guards` names them and holds against its finding. */
  readonly unguarded?: readonly string[];
}

interface ParamBase {
  readonly name: string;
  /** One sentence, without "Optional.", which is added where it is true. */
  readonly help: string;
  readonly optional?: true;
}

export interface NumberParam extends ParamBase {
  readonly kind: 'number';
  readonly quantity?: Quantity;
  /** Unit in words where it is not a quantity of ours, for example "Ω" or "days". */
  readonly unit?: string;
  /** Taken where the cell is blank, in cell units. */
  readonly default?: number | Readonly<Record<UnitSystem, number>>;
  /** Limits in inside units. `above` and `below` exclude the limit itself. */
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
  readonly below?: number;
  readonly whole?: true;
}

export interface ChoiceParam extends ParamBase {
  readonly kind: 'choice';
  readonly choices: readonly string[];
}

export interface BooleanParam extends ParamBase {
  readonly kind: 'boolean';
  readonly default?: boolean;
}

export interface DateParam extends ParamBase {
  readonly kind: 'date';
}

/** A list that is read whole and never repeated. */
export interface ListParam extends ParamBase {
  readonly kind: 'list';
  readonly quantity?: Quantity;
  readonly unit?: string;
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
  /** Blank cells: left out; refused; or left out only where the function's other paired list is blank too. */
  readonly blanks: 'skip' | 'refuse' | 'pair';
  readonly atLeast: number;
  readonly atMost?: number;
}

/** Latitude and longitude, two columns of decimal degrees, read whole. */
export interface CornersParam extends ParamBase {
  readonly kind: 'corners';
}

/** "US" or "metric"; always last. */
export interface UnitsParam extends ParamBase {
  readonly kind: 'units';
  readonly name: 'units';
  readonly optional: true;
}

export type Param =
  | NumberParam
  | ChoiceParam
  | BooleanParam
  | DateParam
  | ListParam
  | CornersParam
  | UnitsParam;

type Inside<P extends Param> = P extends NumberParam
  ? number
  : P extends ChoiceParam
    ? P['choices'][number]
    : P extends BooleanParam
      ? boolean
      : P extends DateParam
        ? Day
        : P extends ListParam
          ? readonly number[]
          : P extends CornersParam
            ? readonly Corner[]
            : UnitSystem;

/** Optional arguments without a default may be missing. */
type Argument<P extends Param> = P extends UnitsParam
  ? UnitSystem
  : P extends { default: unknown }
    ? Inside<P>
    : P extends { optional: true }
      ? Inside<P> | undefined
      : Inside<P>;

export type Arguments<Ps extends readonly Param[]> = { [I in keyof Ps]: Argument<Ps[I]> };

export interface ColumnOut {
  readonly label: string;
  readonly quantity?: Quantity;
  /** Unit in words where it is not a quantity of ours. */
  readonly unit?: string;
}

/** What comes back: one value; one row of values; a row as long as it turns out; or lines of item, amount, unit. */
export type Result =
  | ({ readonly kind: 'value' } & ColumnOut)
  | { readonly kind: 'row'; readonly columns: readonly ColumnOut[] }
  | ({ readonly kind: 'open-row' } & ColumnOut)
  | { readonly kind: 'lines'; readonly label: string };

type Returned<R extends Result> = R extends { kind: 'value' }
  ? number
  : R extends { kind: 'lines' }
    ? readonly ListLine[]
    : readonly number[];

export type CellValue = number | string | boolean;

export interface Example {
  /** Cell arguments as typed; undefined is an argument left out. A list is written as rows of cells. */
  readonly args: readonly (CellValue | undefined | readonly (readonly CellValue[])[])[];
  /** The answer as the contract prints it: a value, or rows of values. */
  readonly gives: CellValue | readonly (readonly CellValue[])[];
  /** Half a unit of the last printed digit; exact (1e-9 relative) where absent. */
  readonly tolerance?: number;
}

export type Topic = 'fence' | 'energizer' | 'pigs' | 'rotation' | 'training';

export interface Entry<Ps extends readonly Param[] = readonly Param[], R extends Result = Result> {
  /** The name typed into a cell. */
  readonly name: string;
  readonly topic: Topic;
  /** First sentence of the help: stands alone. */
  readonly summary: string;
  /** The formula in plain words or symbols, for the help. */
  readonly formula: string;
  readonly params: Ps;
  readonly result: R;
  readonly sources: readonly SourceUse[];
  /** Shown with the result wherever a wrong reading can hurt. */
  readonly cautions?: readonly string[];
  readonly examples: readonly Example[];
  readonly run: (...args: Arguments<Ps>) => Returned<R>;
}

/** An entry whose argument types are forgotten, as the door and the generators handle it. */
export interface AnyEntry extends Omit<Entry, 'run'> {
  readonly run: (...args: never[]) => number | readonly number[] | readonly ListLine[];
}

export function define<const Ps extends readonly Param[], const R extends Result>(
  entry: Entry<Ps, R>,
): AnyEntry {
  return entry as unknown as AnyEntry;
}
