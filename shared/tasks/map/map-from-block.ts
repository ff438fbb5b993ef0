/** The map again, from the corner table of a block that stands in the sheet: typed corrections included. */

import { cellA1 } from '../../block/a1';
import { firstFew } from '../../block/first-few';
import { type BlockContent, type TableRow, tableRows } from '../../block/read-block';
import { CORNERS_TITLE } from '../../block/words';
import type { BlockCell, WireCell } from '../../contract';
import type { UnitSystem } from '../../units/units';
import { type AddedColumns, addedColumns } from '../added-columns';
import { keptCell } from '../kept-cell';
import { CORNER_HEADINGS, listHeadings } from './map-block';
import { mapFromGeojson } from './map-from-geojson';
import type { FarmMap } from './map-model';
import { MapTrouble } from './map-trouble';
import * as words from './words';

/** Errors: MapTrouble where the corners are gone or are not degrees. */
export function mapFromBlock(block: BlockContent): FarmMap {
  const rows = tableRows(block, CORNER_HEADINGS);
  if (!rows || rows.length === 0) {
    throw new MapTrouble(words.tableGone(block.info.tab));
  }
  const rings = new Map<string, [number, number][]>();
  for (const row of rows) {
    const [latitude, longitude] = [row.value('latitude'), row.value('longitude')];
    if (typeof latitude !== 'number' || typeof longitude !== 'number') {
      throw new MapTrouble(words.badCorner(block.info.tab, cellA1(row.sheetRow, block.info.column + 2)));
    }
    const name = String(row.value('corner of'));
    rings.set(name, [...(rings.get(name) ?? []), [longitude, latitude]]);
  }
  refuseOtherNames(block, rings);
  const isHole = (name: string): boolean =>
    rings.has(name.replace(/, hole \d+$/, '')) && / hole \d+$/.test(name);
  const outlines = [...rings].filter(([name]) => !isHole(name));
  return mapFromGeojson({
    type: 'FeatureCollection',
    features: outlines.map(([name, outline]) => ({
      type: 'Feature',
      properties: { name },
      geometry: {
        type: 'Polygon',
        coordinates: [
          outline,
          ...[...rings]
            .filter(([hole]) => isHole(hole) && hole.replace(/, hole \d+$/, '') === name)
            .map(([, ring]) => ring),
        ],
      },
    })),
  });
}

/** Names follow the corner table; an outline needs three corners. */
function refuseOtherNames(block: BlockContent, rings: ReadonlyMap<string, readonly unknown[]>): void {
  const { info } = block;
  const refuse = (rows: readonly TableRow[], must: string): void => {
    if (rows.length === 0) return;
    const cells = rows.map(({ sheetRow }) => cellA1(sheetRow, info.column));
    throw new MapTrouble(`On “${info.tab}” must be ${must}: ${firstFew(cells)}.`);
  };
  const corners = tableRows(block, CORNER_HEADINGS) ?? [];
  refuse(
    corners.filter((row) => (rings.get(String(row.value('corner of')))?.length ?? 0) < FEWEST_CORNERS),
    `the name of a paddock with ${FEWEST_CORNERS} corners or more`,
  );
  const { name, adjoining } = listHeadings('US');
  const rows = tableRows(block, [name, adjoining]) ?? [];
  const end = rows.findIndex((row) => row.value(name) === CORNERS_TITLE);
  refuse(
    rows
      .slice(0, end < 0 ? rows.length : end)
      .filter((row) => row.value(name) !== '' && !rings.has(String(row.value(name)))),
    'a name of the corner table below (change it there, in all its rows)',
  );
}

const FEWEST_CORNERS = 3;

/** The names and corners that stand in a map table, typed corrections included. */
export function drawnIn(block: BlockContent): readonly unknown[] {
  const corners = tableRows(block, CORNER_HEADINGS) ?? [];
  const names = block.values.map(([first]) => first);
  return [names, corners.map((row) => [row.value('latitude'), row.value('longitude')])];
}

export interface KeptInMap {
  readonly notes: ReadonlyMap<string, BlockCell>;
  /** Distances to water and wells: the table does not hold where these lie. */
  readonly toWater: ReadonlyMap<string, BlockCell>;
  readonly toWell: ReadonlyMap<string, BlockCell>;
  readonly added: AddedColumns;
}

/** What a rebuild keeps: notes, distances and added columns, found again by the paddock's name. */
export function keptInMap(block: BlockContent, units: UnitSystem): KeptInMap {
  const headings = listHeadings(units);
  const rows = tableRows(block, [headings.name, headings.adjoining, headings.note]) ?? [];
  const under = (heading: string): ReadonlyMap<string, BlockCell> =>
    new Map(
      rows
        .filter((row) => row.value(heading) !== '')
        .map((row) => [nameOf(row.value(headings.name)), keptCell(row.value(heading), '')]),
    );
  return {
    notes: under(headings.note),
    toWater: under(headings.water),
    toWell: under(headings.well),
    added: addedColumns(block, Object.values(headings), headings.name),
  };
}

function nameOf(cell: WireCell): string {
  return typeof cell === 'object' ? cell.d : String(cell);
}
