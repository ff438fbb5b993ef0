/** Paddocks from corners typed in the sheet: latitude and longitude, with a name column in front or without. */
import { cellA1 } from '../../block/a1';
import type { Selection, WireCell } from '../../contract';
import { checkedOutline } from '../../core/fence/checked-outline';
import type { Corner } from '../../core/fence/corner';
import { describeCell, Refusal } from '../../refusals';
import { degreesTrouble } from './clean-corners';
import { MOST_CORNERS, MOST_CORNERS_OF_ONE, MOST_SHAPES } from './limits';
import type { FarmMap, MapShape } from './map-model';
import { MapTrouble } from './map-trouble';
import { uniqueNames } from './unique-names';
import * as words from './words';

interface Ring {
  readonly name: string;
  readonly firstRow: number;
  readonly corners: Corner[];
}

type Cells = Pick<Selection, 'tab' | 'row' | 'column' | 'values'>;

/**
 * Two columns: a blank row begins the next paddock. Three: the name stands in front, on every row or only on
 * the paddock's first. A heading row is skipped.
 *
 * Errors: MapTrouble naming every cell that is not a degree, all at once.
 */
export function mapFromTyped(cells: Cells): FarmMap {
  const width = cells.values[0]?.length ?? 0;
  if (width !== 2 && width !== 3) {
    throw new MapTrouble(words.selectColumns(width));
  }
  const rings = readRings(cells, width);
  if (rings.length === 0) throw new MapTrouble(words.BLANK_SELECTION);
  const names = uniqueNames(rings.map(({ name }, i) => name || `Paddock ${i + 1}`));
  const problems: string[] = [];
  const shapes = rings.flatMap((ring, i): MapShape[] => {
    const name = names[i] ?? ring.name;
    try {
      return [{ name, form: 'area', corners: checkedOutline(ring.corners), holes: [] }];
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      problems.push(`"${name}", typed from row ${ring.firstRow}, was left out: ${error.message}.`);
      return [];
    }
  });
  if (shapes.length === 0) throw new MapTrouble(problems.join(' '));
  return { shapes, problems };
}

function readRings(cells: Cells, width: number): readonly Ring[] {
  const rings: Ring[] = [];
  const wrong: string[] = [];
  let ring: Ring | undefined;
  let corners = 0;
  cells.values.forEach((row, r) => {
    const [latitude = '', longitude = ''] = row.slice(-2);
    const named = width === 3 ? nameText(row[0]) : '';
    if (latitude === '' && longitude === '') {
      ring = undefined;
      return;
    }
    if (corners === 0 && isHeading(latitude) && isHeading(longitude)) return;
    const bad = troubleInRow(cells, r, width, latitude, longitude);
    if (bad) wrong.push(bad);
    if (!ring || (named !== '' && named !== ring.name)) {
      ring = { name: named, firstRow: cells.row + r, corners: [] };
      rings.push(ring);
    }
    corners++;
    ring.corners.push({ latitudeDegrees: Number(latitude), longitudeDegrees: Number(longitude) });
  });
  refuse(wrong, rings.length, corners);
  const long = rings.find((one) => one.corners.length > MOST_CORNERS_OF_ONE);
  if (long) {
    throw new MapTrouble(words.cornersOfOne(long.firstRow, long.corners.length, MOST_CORNERS_OF_ONE));
  }
  return rings;
}

const MOST_NAMED = 8;

function refuse(wrong: readonly string[], rings: number, corners: number): void {
  if (wrong.length > 0) {
    const more = wrong.length > MOST_NAMED ? ` And ${wrong.length - MOST_NAMED} more.` : '';
    throw new MapTrouble(`${wrong.slice(0, MOST_NAMED).join(' ')}${more}`);
  }
  if (rings > MOST_SHAPES) throw new MapTrouble(words.manyPaddocks(rings, MOST_SHAPES));
  if (corners > MOST_CORNERS) throw new MapTrouble(words.manyCorners(corners, MOST_CORNERS));
}

function troubleInRow(
  cells: Cells,
  r: number,
  width: number,
  latitude: WireCell,
  longitude: WireCell,
): string | undefined {
  const notNumber = [latitude, longitude].findIndex((cell) => typeof cell !== 'number');
  const column = cells.column + width - 2 + Math.max(0, notNumber);
  const cell = cellA1(cells.row + r, column);
  if (notNumber >= 0) {
    const got = notNumber === 0 ? latitude : longitude;
    return words.badDegrees(cell, describeCell(typeof got === 'object' ? got.d : got));
  }
  const why = degreesTrouble(latitude, longitude);
  return why && `Row ${cells.row + r} ${why}.`;
}

/** Words over the numbers, not something that was meant as a degree. */
function isHeading(cell: WireCell): boolean {
  return typeof cell === 'string' && /^\s*\p{L}/u.test(cell) && !/\d/.test(cell);
}

function nameText(cell: WireCell | undefined): string {
  if (cell === undefined) return '';
  return (typeof cell === 'object' ? cell.d : String(cell)).replace(/\s+/g, ' ').trim();
}
