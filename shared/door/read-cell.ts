/** Reads one cell for one argument: blank, refused or a value in inside units. */
import type { BooleanParam, ChoiceParam, DateParam, ListParam, NumberParam } from '../catalogue/define';
import { type Day, dayFromIso } from '../core/calendar/day';
import { amount, describeCell, Refusal, type Words } from '../refusals';
import { toInside, type UnitSystem } from '../units/units';
import type { Edge } from './edge';

const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** Blank means "not given": empty text, null or left out. */
export function isBlank(cell: unknown): boolean {
  return cell === '' || cell === undefined || cell === null;
}

/** The number in a cell, plain text numbers included; refuses everything else. */
export function readNumber(
  param: Pick<NumberParam | ListParam, 'name' | 'quantity' | 'above' | 'min' | 'max'> & { whole?: true },
  cell: unknown,
  system: UnitSystem,
): number {
  const typed = typeof cell === 'string' && PLAIN_NUMBER.test(cell.trim()) ? Number(cell) : cell;
  if (typeof typed !== 'number' || !Number.isFinite(typed)) {
    throw new Refusal(param.name, 'be a number', describeCell(cell));
  }
  const inside = param.quantity ? toInside(typed, param.quantity, system) : typed;
  const limit = brokenLimit(param, inside);
  if (limit) throw new Refusal(param.name, limit, gotAmount(param, typed, inside));
  return inside;
}

/** Limits in words where a number breaks them, else undefined. */
function brokenLimit(
  param: Pick<NumberParam | ListParam, 'quantity' | 'above' | 'min' | 'max'> & { whole?: true },
  inside: number,
): Words | undefined {
  const show = (limit: number): Words => (param.quantity ? amount(limit, param.quantity) : String(limit));
  if (param.above !== undefined && !(inside > param.above)) return join('be more than ', show(param.above));
  if (param.whole && !Number.isInteger(inside)) return 'be a whole number';
  const { min, max } = param;
  if ((min !== undefined && inside < min) || (max !== undefined && inside > max)) {
    if (min !== undefined && max !== undefined) return join('be from ', show(min), ' to ', show(max));
    return min !== undefined ? join('be ', show(min), ' or more') : join('be ', show(max ?? 0), ' or less');
  }
  return undefined;
}

function join(...parts: Words[]): Words {
  return parts.flat() as Words;
}

function gotAmount(param: { quantity?: NumberParam['quantity'] }, typed: number, inside: number): Words {
  return param.quantity ? amount(inside, param.quantity) : describeCell(typed);
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
