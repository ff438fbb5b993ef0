/** Reads one cell for one argument: blank, refused or a value in inside units. */
import type { BooleanParam, ChoiceParam, DateParam, NumberParam, Param } from '../catalogue/define';
import { type Day, dayFromIso } from '../core/calendar/day';
import { type Amount, amount, describeCell, least, most, Refusal, type Words } from '../refusals';
import { textAmount } from '../units/text-amount';
import { toInside, type UnitSystem } from '../units/units';
import type { Edge } from './edge';

const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** Blank means "not given": empty text, null or left out. */
export function isBlank(cell: unknown): boolean {
  return cell === '' || cell === undefined || cell === null;
}

/** A single argument: its value, its default where blank, or a refusal. */
export function readArgument(param: Param, cell: unknown, system: UnitSystem, edge: Edge): unknown {
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

type Limits = Pick<NumberParam, 'quantity' | 'unit' | 'above' | 'min' | 'max' | 'below' | 'whole'>;

/** The number in a cell, one kept as text and with its unit included; refuses everything else. */
export function readNumber(param: Limits & { name: string }, cell: unknown, system: UnitSystem): number {
  const inside = insideOf(param, cell, system);
  if (inside === undefined) throw new Refusal(param.name, 'be a number', describeCell(cell));
  const limit = brokenLimit(param, inside);
  if (limit) {
    throw new Refusal(
      param.name,
      limit,
      param.quantity ? amount(inside, param.quantity) : describeCell(inside),
    );
  }
  return inside;
}

function insideOf(param: Limits, cell: unknown, system: UnitSystem): number | undefined {
  if (typeof cell === 'string' && !PLAIN_NUMBER.test(cell.trim())) return textAmount(param, cell, system);
  const typed = typeof cell === 'string' ? Number(cell) : cell;
  if (typeof typed !== 'number' || !Number.isFinite(typed)) return undefined;
  return param.quantity ? toInside(typed, param.quantity, system) : typed;
}

/** Limits in words where a number breaks one of them, else undefined. */
function brokenLimit(param: Limits, inside: number): Words | undefined {
  const { above, min, max, below, whole } = param;
  const fits =
    (above === undefined || inside > above) &&
    (min === undefined || inside >= min) &&
    (max === undefined || inside <= max) &&
    (below === undefined || inside < below);
  if (fits) return whole && !Number.isInteger(inside) ? 'be a whole number' : undefined;
  const show = (limit: number, side: typeof least): Words =>
    param.quantity ? side(limit, param.quantity) : String(limit);
  if (min !== undefined && max !== undefined)
    return join('be from ', show(min, least), ' to ', show(max, most));
  const low =
    above !== undefined
      ? join('more than ', show(above, least))
      : min !== undefined
        ? join(show(min, least), ' or more')
        : [];
  const high =
    below !== undefined
      ? join('less than ', show(below, most))
      : max !== undefined
        ? join('at most ', show(max, most))
        : [];
  return join('be ', low, low.length > 0 && high.length > 0 ? ' and ' : '', high);
}

function join(...parts: Words[]): readonly (string | Amount)[] {
  return parts.flat() as readonly (string | Amount)[];
}

export function readChoice(param: ChoiceParam, cell: unknown): string {
  const wanted = typeof cell === 'string' ? cell.trim().toLowerCase() : undefined;
  const found = param.choices.find((choice) => choice.toLowerCase() === wanted);
  if (found === undefined) {
    throw new Refusal(
      param.name,
      `be one of ${param.choices.map((c) => `"${c}"`).join(', ')}`,
      describeCell(cell),
    );
  }
  return found;
}

export function readBoolean(param: BooleanParam, cell: unknown): boolean {
  if (typeof cell === 'boolean') return cell;
  const text = typeof cell === 'string' ? cell.trim().toUpperCase() : '';
  if (text === 'TRUE') return true;
  if (text === 'FALSE') return false;
  throw new Refusal(param.name, 'be TRUE or FALSE', describeCell(cell));
}

export function readDate(param: DateParam, cell: unknown, edge: Edge): Day {
  if (Object.prototype.toString.call(cell) === '[object Date]') {
    const day = edge.dayOfDate(cell);
    if (Number.isFinite(day)) return day;
  }
  const day = typeof cell === 'string' ? dayFromIso(cell) : undefined;
  if (day === undefined) {
    throw new Refusal(
      param.name,
      'be a date (a date cell, or text such as "2026-04-20")',
      describeCell(cell),
    );
  }
  return day;
}

/** The unit system: blank is US. */
export function readUnits(cell: unknown): UnitSystem {
  if (isBlank(cell)) return 'US';
  const text = typeof cell === 'string' ? cell.trim().toLowerCase() : '';
  if (text === 'us') return 'US';
  if (text === 'metric') return 'metric';
  throw new Refusal('units', 'be "US" or "metric"', describeCell(cell));
}
