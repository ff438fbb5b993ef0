/** Rectangles of a tab, counted from 0, and their A1 names. */
import type { Size } from '../engine/book';
import type { EngineZone } from '../engine/engine';

export type Area = { sheetId: string; row: number; column: number; rows: number; columns: number };

export function zoneOf(area: Area): EngineZone {
  return {
    top: area.row,
    left: area.column,
    bottom: area.row + area.rows - 1,
    right: area.column + area.columns - 1,
  };
}

export function areaOf(sheetId: string, zone: EngineZone): Area {
  return {
    sheetId,
    row: zone.top,
    column: zone.left,
    rows: zone.bottom - zone.top + 1,
    columns: zone.right - zone.left + 1,
  };
}

export function overlaps(one: Area, other: Area): boolean {
  return (
    one.sheetId === other.sheetId &&
    one.row < other.row + other.rows &&
    other.row < one.row + one.rows &&
    one.column < other.column + other.columns &&
    other.column < one.column + one.columns
  );
}

export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

export function a1Of(area: Area): string {
  const first = `${columnLetters(area.column)}${area.row + 1}`;
  if (area.rows === 1 && area.columns === 1) return first;
  return `${first}:${columnLetters(area.column + area.columns - 1)}${area.row + area.rows}`;
}

const CORNER = '\\$?([A-Za-z]{1,3})?\\$?(\\d+)?';
const A1 = new RegExp(`^${CORNER}(?::${CORNER})?$`);

/** Rectangle of an A1 text without tab name ("B2", "B2:C", "B:C", "2:3"), or undefined. */
export function areaOfA1(text: string, sheetId: string, size: Size): Area | undefined {
  const match = A1.exec(text);
  if (!match) return undefined;
  const [, letters, digits, lastLetters, lastDigits] = match;
  const isPair = text.includes(':');
  if (!isPair && (!letters || !digits)) return undefined;
  if (isPair && ((!letters && !digits) || (!lastLetters && !lastDigits))) return undefined;
  const left = letters ? columnNumber(letters) : 0;
  const top = digits ? Number(digits) - 1 : 0;
  const right = isPair ? (lastLetters ? columnNumber(lastLetters) : size.columns - 1) : left;
  const bottom = isPair ? (lastDigits ? Number(lastDigits) - 1 : size.rows - 1) : top;
  if (Math.min(left, top, right, bottom) < 0) return undefined;
  return areaOf(sheetId, {
    top: Math.min(top, bottom),
    left: Math.min(left, right),
    bottom: Math.max(top, bottom),
    right: Math.max(left, right),
  });
}

/** Splits "'My tab'!A1" into tab name and rest. */
export function splitTabName(text: string): { tab: string | undefined; rest: string } {
  const match = /^(?:'((?:[^']|'')+)'|([^!']+))!(.+)$/.exec(text);
  if (!match) return { tab: undefined, rest: text };
  return { tab: match[1]?.replace(/''/g, "'") ?? match[2], rest: match[3] ?? '' };
}

/** Zones of equal entries in a matrix laid over an area: equal runs of a row, joined downwards. */
export function zonesByEntry<Entry>(
  area: Area,
  matrix: readonly (readonly Entry[])[],
): Map<Entry, EngineZone[]> {
  const groups = new Map<Entry, EngineZone[]>();
  /** Runs that end on the row above, by where they stand: only these can grow. */
  let open = new Map<string, { entry: Entry; zone: EngineZone }>();
  matrix.forEach((line, rowOffset) => {
    const next: typeof open = new Map();
    for (let start = 0; start < line.length; ) {
      const entry = line[start] as Entry;
      let end = start;
      while (end + 1 < line.length && line[end + 1] === entry) end += 1;
      const row = area.row + rowOffset;
      const above = open.get(`${start}-${end}`);
      const zone = { left: area.column + start, right: area.column + end, top: row, bottom: row };
      if (above?.entry === entry) {
        above.zone.bottom = row;
        next.set(`${start}-${end}`, above);
      } else {
        const zones = groups.get(entry) ?? [];
        zones.push(zone);
        groups.set(entry, zones);
        next.set(`${start}-${end}`, { entry, zone });
      }
      start = end + 1;
    }
    open = next;
  });
  return groups;
}
