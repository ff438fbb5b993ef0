/**
 * Refusals: one house phrase for everything that is turned down.
 *
 *   NAME: argument must …, got …
 *
 * The core throws a Refusal with amounts in inside units; the door knows the function's name and the grower's
 * unit system and prints the sentence.
 */
import { fromInside, type Quantity, symbolOf, type UnitSystem } from './units/units';

/** An amount in inside units that prints in the grower's unit. */
export interface Amount {
  readonly value: number;
  readonly quantity: Quantity;
  /** It is a limit: rounded to the side that is accepted, so that the number told can be typed. */
  readonly limit?: 'least' | 'most';
}

export type Words = string | Amount | readonly (string | Amount)[];

export class Refusal extends Error {
  constructor(
    readonly argument: string,
    /** What follows "must ". */
    readonly must: Words,
    /** What follows "got "; absent where nothing more can be said. */
    readonly got?: Words,
  ) {
    super(
      `${argument} must ${words(must, 'metric')}${got === undefined ? '' : `, got ${words(got, 'metric')}`}`,
    );
    this.name = 'Refusal';
  }

  /** The sentence for a cell. Limits that come from the other unit system are rounded to read well. */
  sentence(functionName: string, system: UnitSystem): string {
    const got = this.got === undefined ? '' : `, got ${words(this.got, system)}`;
    return `${functionName}: ${this.argument} must ${words(this.must, system, DIGITS_OF_LIMITS)}${got}`;
  }
}

/** Whether a cell shows such a sentence: nobody types one. */
export function isRefusalSentence(cell: unknown): boolean {
  return typeof cell === 'string' && /^[A-Z]+(?:_[A-Z]+)+: .+ must ./s.test(cell);
}

export function amount(value: number, quantity: Quantity): Amount {
  return { value, quantity };
}

/** The least amount that is accepted. */
export function least(value: number, quantity: Quantity): Amount {
  return { value, quantity, limit: 'least' };
}

/** The most that is accepted. */
export function most(value: number, quantity: Quantity): Amount {
  return { value, quantity, limit: 'most' };
}

const DIGITS = 6;
const DIGITS_OF_LIMITS = 4;

/** A number as people write it: up to 6 significant digits, no trailing zeros. */
export function plainNumber(value: number, digits = DIGITS): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(digits))) : 'a number out of range';
}

const LONGEST_QUOTE = 40;

/** What stood in a cell, for "got …". */
export function describeCell(cell: unknown): string {
  if (cell === undefined || cell === null || cell === '') return 'a blank';
  if (typeof cell === 'number') return plainNumber(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell === 'string') {
    const text = cell.length > LONGEST_QUOTE ? `${cell.slice(0, LONGEST_QUOTE)}…` : cell;
    return isErrorText(cell) ? `the error ${text}` : `"${text}"`;
  }
  return Object.prototype.toString.call(cell) === '[object Date]'
    ? 'a date'
    : 'something that is not a value';
}

/** Error values reach a custom function inside a range as text such as "#N/A". */
export function isErrorText(cell: unknown): boolean {
  return typeof cell === 'string' && /^#(N\/A|[A-Z0-9/]+[!?])$/.test(cell);
}

function words(parts: Words, system: UnitSystem, digits = DIGITS): string {
  if (typeof parts === 'string') return parts;
  if (isAmount(parts)) return amountWords(parts, system, digits);
  return parts.map((part) => (typeof part === 'string' ? part : amountWords(part, system, digits))).join('');
}

function isAmount(parts: Words): parts is Amount {
  return typeof parts === 'object' && 'quantity' in parts;
}

function amountWords({ value, quantity, limit }: Amount, system: UnitSystem, digits: number): string {
  const shown = fromInside(value, quantity, system);
  const told = limit ? inward(shown, limit, digits) : shown;
  return `${plainNumber(told, digits)} ${symbolOf(quantity, system)}`;
}

/** What conversion to and fro can lose of a number; far below any digit that is told. */
const NOISE = 1e-12;

/** Rounded to so many digits, up for the least and down for the most: 11.0231 becomes 11.03. */
function inward(value: number, limit: 'least' | 'most', digits: number): number {
  const near = Number(value.toPrecision(digits));
  const inside = limit === 'least' ? near - value : value - near;
  if (!Number.isFinite(near) || inside >= -NOISE * Math.abs(value)) return near;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) + 1 - digits);
  return limit === 'least' ? near + step : near - step;
}
