/** Reads a "Will it bite" block that stands already: its lines, wires and settings as typed there. */

import { cellA1 } from '../../block/a1';
import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import { describeCell } from '../../refusals';
import { type Metal, RESISTIVITY_OHM_METERS } from '../../tables/resistivity';
import { toInside, type UnitSystem } from '../../units/units';
import { LOOK_OUT_TITLE } from '../look-out';
import { type KeptRow, rowsBetween, textOf } from '../rows-between';
import { readSettings, type SettingsRead } from '../settings';
import { LEVELS_TITLE, LINE_HEADINGS, type PlannedLine } from './bite-block';
import { BITE_SETTINGS, type BiteKey } from './bite-settings';
import { WIRE_HEADINGS, type WireRow } from './wire-rows';
import type { Strand } from './wires';
import * as words from './words';

export interface BiteRead {
  readonly lines: readonly PlannedLine[];
  readonly wires: readonly WireRow[];
  readonly settings: SettingsRead<BiteKey>;
  /** Rows that cannot be read, each with its cell. */
  readonly problems: readonly string[];
}

export function readBite(block: BlockContent, units: UnitSystem): BiteRead {
  const problems: string[] = [];
  const lines = rowsBetween(block, LINE_HEADINGS, LOOK_OUT_TITLE, 'Settings')
    .filter((row) => !row.emptyUnder(LINE_HEADINGS.slice(0, 4)))
    .flatMap((row) => readLine(row, units, block, problems));
  const wires = rowsBetween(block, WIRE_HEADINGS, LEVELS_TITLE)
    .filter((row) => !row.emptyUnder(WIRE_HEADINGS.slice(0, 8)))
    .map((row) => {
      tellFormulas(row, block, problems);
      return readWire(row, units);
    });
  return { lines, wires, settings: readSettings(block, BITE_SETTINGS), problems };
}

function readLine(row: KeptRow, units: UnitSystem, block: BlockContent, problems: string[]): PlannedLine[] {
  const typed = row.kept('Length');
  const length = numberOf(typed);
  tellWrongKinds(row, block, problems);
  if (length === undefined || length <= 0) {
    const where = `${block.info.tab}!${cellA1(row.sheetRow, block.info.column + 2)}`;
    const got = 'v' in typed ? describeCell(typed.v) : 'a blank';
    problems.push(words.badLength(where, got));
    return [];
  }
  const meters = toInside(length, 'length', units);
  const liveWires = numberOf(row.kept('Live wires')) ?? 1;
  return [{ name: textOf(row.kept('Line')), meters, liveWires, wire: textOf(row.kept('Wire of the line')) }];
}

/** What of a line is a name must be text, and the live wires a number: else it would be gone with the next table. */
function tellWrongKinds(row: KeptRow, block: BlockContent, problems: string[]): void {
  for (const [heading, kind, must] of KINDS) {
    const cell = row.kept(heading);
    if (cell.k === kind || cell.k === 'blank') continue;
    const where = cellUnder(block, LINE_HEADINGS, heading, row.sheetRow);
    problems.push(`${where}: ${heading} must be ${must}, got ${describeCell(cell.v)}`);
  }
}

/** Names and figures of a wire are written anew as values. */
function tellFormulas(row: KeptRow, block: BlockContent, problems: string[]): void {
  for (const heading of WIRE_HEADINGS.slice(0, 8)) {
    const cell = row.kept(heading);
    if (cell.k !== 'f') continue;
    const where = cellUnder(block, WIRE_HEADINGS, heading, row.sheetRow);
    problems.push(words.typedAsValue(where, heading, cell.v));
  }
}

function cellUnder(
  { info, values }: BlockContent,
  headings: readonly string[],
  heading: string,
  sheetRow: number,
): string {
  const column = values[headingRow(values, headings)]?.indexOf(heading) ?? 0;
  return `${info.tab}!${cellA1(sheetRow, info.column + column)}`;
}

const KINDS = [
  ['Line', 't', 'text'],
  ['Wire of the line', 't', 'text'],
  ['Live wires', 'n', 'a number'],
] as const;

function readWire(row: KeptRow, units: UnitSystem): WireRow {
  const strand = (metal: string, thickness: string, wires: string): Strand[] => {
    const name = textOf(row.kept(metal));
    const thick = numberOf(row.kept(thickness));
    if (!isMetal(name) || thick === undefined) return [];
    const diameterMeters = toInside(thick, 'diameter', units);
    return [{ metal: name, diameterMeters, wires: numberOf(row.kept(wires)) ?? 1 }];
  };
  const typedOhms = numberOf(row.kept('Ohms typed'));
  return {
    name: textOf(row.kept('Wire')),
    strands: [
      ...strand('Metal', 'Thickness', 'Strands'),
      ...strand('Second metal', 'Thickness of it', 'Strands of it'),
    ],
    note: '',
    ...(typedOhms !== undefined && { typedOhms }),
  };
}

function isMetal(name: string): name is Metal {
  return name in RESISTIVITY_OHM_METERS;
}

function numberOf(cell: BlockCell): number | undefined {
  return cell.k === 'n' ? cell.v : undefined;
}
