/** The map again, from the corner table of a block that stands in the sheet: typed corrections included. */

import { cellA1 } from '../../block/a1';
import { type BlockContent, tableRows } from '../../block/read-block';
import type { BlockCell, WireCell } from '../../contract';
import type { UnitSystem } from '../../units/units';
import { type AddedColumns, addedColumns } from '../added-columns';
import { keptCell } from '../kept-cell';
import { CORNER_COLUMNS, CORNER_HEADINGS, listHeadings } from './map-block';
import { mapFromGeojson } from './map-from-geojson';
import type { FarmMap } from './map-model';
import { MapTrouble } from './map-trouble';

/** Errors: MapTrouble where the corners are gone or are not degrees. */
export function mapFromBlock(block: BlockContent): FarmMap {
  const rows = tableRows(block, CORNER_HEADINGS);
  if (!rows || rows.length === 0) {
    throw new MapTrouble(
      `The corner table on "${block.info.tab}" is gone. Take the corners from a file instead.`,
    );
  }
  const rings = new Map<string, [number, number][]>();
  for (const row of rows) {
    const [latitude, longitude] = [row.value('latitude'), row.value('longitude')];
    if (typeof latitude !== 'number' || typeof longitude !== 'number') {
      throw new MapTrouble(
        `${block.info.tab}!${cellA1(row.sheetRow, block.info.column + 2)} and the cell beside it must be decimal degrees.`,
      );
    }
    const name = String(row.value('corner of'));
    rings.set(name, [...(rings.get(name) ?? []), [longitude, latitude]]);
  }
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

/** The names and corners that stand in a map table, typed corrections included. */
export function drawnIn(block: BlockContent): readonly unknown[] {
  const corners = tableRows(block, CORNER_HEADINGS) ?? [];
  const names = block.values.map(([first]) => first);
  return [names, corners.map((row) => [row.value('latitude'), row.value('longitude')])];
}

export interface KeptInMap {
  readonly notes: ReadonlyMap<string, BlockCell>;
  readonly added: AddedColumns;
}

/** What a rebuild keeps: notes and added columns, found again by the paddock's name. */
export function keptInMap(block: BlockContent, units: UnitSystem): KeptInMap {
  const headings = listHeadings(units);
  const rows = tableRows(block, [headings.name, headings.adjoining, headings.note]) ?? [];
  const filled = rows.filter((row) => row.value(headings.note) !== '');
  return {
    notes: new Map(
      filled.map((row) => [nameOf(row.value(headings.name)), keptCell(row.value(headings.note), '')]),
    ),
    added: addedColumns(block, Object.values(headings), headings.name),
  };
}

function nameOf(cell: WireCell): string {
  return typeof cell === 'object' ? cell.d : String(cell);
}

/**
 * The same block with only what a rebuild must not lose: titles, settings, notes and columns of the grower's.
 * Measured cells and corners are blanked: the map that is written anew replaces them.
 */
export function withoutMeasured(block: BlockContent, units: UnitSystem): BlockContent {
  const headings = listHeadings(units);
  const measured: readonly string[] = Object.values(headings).filter((one) => one !== headings.note);
  const find = (wanted: readonly string[]): number =>
    block.values.findIndex((row) => wanted.every((heading) => row.includes(heading)));
  const [list, corners] = [find([headings.name, headings.adjoining]), find(CORNER_HEADINGS)];
  const listRows = block.values.slice(list + 1).findIndex((row) => row[0] === '');
  const listEnd = list + 1 + (listRows < 0 ? block.values.length : listRows);
  // Where only some rows of a measured column hold something, somebody typed it: ours are filled in every row.
  const isWhole = (c: number): boolean => block.values.slice(list + 1, listEnd).every((row) => row[c] !== '');
  const values = block.values.map((row, r) =>
    row.map((value, c) => {
      if (corners >= 0 && r > corners) return c < CORNER_COLUMNS ? '' : value;
      const inList = list >= 0 && r > list && r < listEnd && (corners < 0 || r < corners);
      const heading = String(block.values[list]?.[c]);
      const mayBeBlank = heading === headings.water || heading === headings.well;
      const isOurs = inList && measured.includes(heading) && (!mayBeBlank || isWhole(c));
      return isOurs ? '' : value;
    }),
  );
  return { ...block, values };
}
