import { readAmount } from '../../locale/read-amount';
import { fromInside, toInside, type UnitSystem } from '../../units/units';
import type { PlannedLine } from './bite-block';
import type { WireRow } from './wire-rows';

/** A line as it is typed on the page. */
export interface TypedLine {
  readonly name: string;
  readonly length: string;
  readonly liveWires: string;
  readonly wire: string;
}

interface On {
  readonly units: UnitSystem;
  readonly comma: boolean;
}

const FIRST_WIRE = 'Polywire, 6 stainless and 3 copper';
export const NEW_LINE: TypedLine = { name: '', length: '', liveWires: '2', wire: FIRST_WIRE };

/** The lines of the block that stands, or one to begin with. */
export function startLines(
  lines: readonly PlannedLine[] | undefined,
  { units, comma }: On,
): readonly TypedLine[] {
  if (!lines || lines.length === 0) return [{ ...NEW_LINE, name: 'Line 1' }];
  return lines.map(({ name, meters, liveWires, wire }) => {
    const length = String(Number(fromInside(meters, 'length', units).toPrecision(12)));
    return { name, length: comma ? length.replace('.', ',') : length, liveWires: String(liveWires), wire };
  });
}

export interface LinesRead {
  readonly lines: readonly PlannedLine[];
  /** For each line what is wrong with it; '' while its length is still to be typed. */
  readonly problems: readonly (string | undefined)[];
}

export function readLines(typed: readonly TypedLine[], wires: readonly WireRow[], on: On): LinesRead {
  const read = typed.map((line) => readLine(line, wires, on));
  return {
    lines: read.flatMap((line) => (typeof line === 'string' ? [] : [line])),
    problems: read.map((line) => (typeof line === 'string' ? line : undefined)),
  };
}

const MOST_WIRES = 10;

function readLine(line: TypedLine, wires: readonly WireRow[], { units, comma }: On): PlannedLine | string {
  if (line.length.trim() === '') return '';
  const length = readAmount(line.length, comma);
  if ('problem' in length) return `length: ${length.problem}`;
  if (length.value === undefined || !(length.value > 0))
    return `length must be more than 0, got ${line.length}`;
  const live = Number(line.liveWires);
  if (!Number.isInteger(live) || live < 1 || live > MOST_WIRES) {
    return `live wires must be a whole number from 1 to ${MOST_WIRES}, got ${line.liveWires || 'a blank'}`;
  }
  if (!wires.some(({ name }) => name === line.wire))
    return `wire must be one of the list, got “${line.wire}”`;
  const meters = toInside(length.value, 'length', units);
  return { name: line.name, meters, liveWires: live, wire: line.wire };
}
