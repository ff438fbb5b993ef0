import { readAmount } from '../../locale/read-amount';
import { fromInside, toInside, type UnitSystem } from '../../units/units';
import type { PlannedLine } from './bite-block';
import type { WireRow } from './wire-rows';
import { COMMON_WIRE } from './wires';

/** A line as it is typed in a form, by the labels of its fields. */
export type TypedLine = {
  readonly Name: string;
  readonly Length: string;
  readonly 'Live wires': string;
  readonly Wire: string;
};

interface On {
  readonly units: UnitSystem;
  readonly comma: boolean;
}

export const NEW_LINE: TypedLine = { Name: '', Length: '', 'Live wires': '2', Wire: COMMON_WIRE };

/** The lines of the block that stands or of the farm's fence, or one to begin with. */
export function startLines(lines: readonly PlannedLine[], { units, comma }: On): readonly TypedLine[] {
  if (lines.length === 0) return [{ ...NEW_LINE, Name: 'Line 1' }];
  return lines.map(({ name, meters, liveWires, wire }) => {
    const length = String(Number(fromInside(meters, 'length', units).toPrecision(12)));
    const typed = comma ? length.replace('.', ',') : length;
    return { Name: name, Length: typed, 'Live wires': String(liveWires), Wire: wire };
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
  const { Name: name, Length: typed, Wire: wire } = line;
  if (typed.trim() === '') return '';
  const length = readAmount(typed, comma);
  if ('problem' in length) return `length: ${length.problem}`;
  if (length.value === undefined || !(length.value > 0)) return `length must be more than 0, got ${typed}`;
  const live = line['Live wires'];
  const liveWires = Number(live);
  if (!Number.isInteger(liveWires) || liveWires < 1 || liveWires > MOST_WIRES) {
    return `live wires must be a whole number from 1 to ${MOST_WIRES}, got ${live || 'a blank'}`;
  }
  if (!wires.some((one) => one.name === wire)) return `wire must be one of the list, got “${wire}”`;
  return { name, meters: toInside(length.value, 'length', units), liveWires, wire };
}
