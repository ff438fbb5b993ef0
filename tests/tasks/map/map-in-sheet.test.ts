/** The map's block, written through the real script into the preview's engine and recalculated there. */
import { describe, expect, it } from 'vitest';
import { number as numberCell, text } from '../../../shared/block/cells';
import type { ComposedBlock } from '../../../shared/block/composed-block';
import { MAP_BLOCK } from '../../../shared/block/own-words';
import type { BlockInfo, Overview, TabContent } from '../../../shared/contract';
import { findLists } from '../../../shared/lists/find-lists';
import type { PaddockList } from '../../../shared/lists/model';
import { readPaddocks } from '../../../shared/lists/read-paddocks';
import { NO_ADDED_COLUMNS } from '../../../shared/tasks/added-columns';
import { composeMapBlock } from '../../../shared/tasks/map/compose-map-block';
import { guessRole } from '../../../shared/tasks/map/guess-role';
import { keptInMap, mapFromBlock } from '../../../shared/tasks/map/map-from-block';
import { mapFromGeojson } from '../../../shared/tasks/map/map-from-geojson';
import { type MeasuredMap, measureMap } from '../../../shared/tasks/map/measure-map';
import { fromInside, type UnitSystem } from '../../../shared/units/units';
import { openWorkbook, type Workbook } from '../../../src/headless';
import { scriptText } from '../script-text';
import { readAsWritten, writeAnew, writeInSheet } from '../sheet-block';
import { SAMPLE_MAP } from './sample-map';

const measured = (map: unknown): MeasuredMap =>
  measureMap(
    mapFromGeojson(map).shapes.map((shape) => ({ ...shape, role: guessRole(shape) })),
    8,
    3,
  );

async function farm(): Promise<Workbook> {
  return openWorkbook({ tabs: { Farm: [['My own notes']] }, codeJs: await scriptText() });
}

function compose(map: MeasuredMap, units: UnitSystem, kept?: ReturnType<typeof keptInMap>) {
  return composeMapBlock({
    map,
    settings: { postSpacing: units === 'US' ? 25 : 8 },
    units,
    origin: { row: 1, column: 1 },
    kept,
  });
}

function write(book: Workbook, block: ComposedBlock): BlockInfo {
  return writeInSheet(book, MAP_BLOCK, block, { at: 'new-tab', tab: 'Map' });
}

const LIST_ROW = 9;

describe('the map block in a sheet', () => {
  it('agrees with geodesics (geographiclib) to 1 in a million, live, in feet and acres', async () => {
    const book = await farm();
    const map = measured(SAMPLE_MAP);
    write(book, compose(map, 'US'));
    const rows = book.values('Map');
    expect(rows[LIST_ROW - 2]?.slice(0, 8)).toEqual([
      'paddock',
      'area (ac)',
      'perimeter (ft)',
      'posts',
      'adjoining',
      'to water (ft)',
      'to well (ft)',
      'note',
    ]);
    map.paddocks.forEach((paddock, i) => {
      const [name, area, perimeter, posts, adjoining] = rows[LIST_ROW - 1 + i] ?? [];
      expect(name).toBe(paddock.name);
      expect(Number(area) / fromInside(paddock.areaSquareMeters, 'area', 'US')).toBeCloseTo(1, 6);
      expect(Number(perimeter) / fromInside(paddock.boundaryMeters, 'length', 'US')).toBeCloseTo(1, 6);
      const sides = paddock.sidesMeters.map((side) => Math.ceil(fromInside(side, 'length', 'US') / 25));
      expect(posts).toBe(sides.reduce((sum, gaps) => sum + gaps));
      expect(adjoining).toBe(paddock.adjoining.join(', '));
    });
  });

  it.each([
    ['on the southern half, across 180°, a kilometre wide', -41.2, 179.995, 0.012, 0.009],
    ['at 70° north', 70, 25, 0.03, 0.008],
    ['on the equator', -0.002, -60, 0.005, 0.006],
  ])('agrees %s', async (_, latitude, longitude, wide, high) => {
    const wrap = (degrees: number): number => (degrees > 180 ? degrees - 360 : degrees);
    const corners = [
      [longitude, latitude],
      [wrap(longitude + wide), latitude + high / 9],
      [wrap(longitude + wide * 0.8), latitude + high],
      [wrap(longitude + wide * 0.1), latitude + high * 0.9],
    ];
    const map = measured({ type: 'Polygon', coordinates: [[...corners, corners[0]]] });
    const book = await farm();
    write(book, compose(map, 'metric'));
    const [, area, perimeter] = book.values('Map')[LIST_ROW - 1] ?? [];
    const paddock = map.paddocks[0]!;
    expect(Number(area) / (paddock.areaSquareMeters / 10_000)).toBeCloseTo(1, 6);
    expect(Number(perimeter) / paddock.boundaryMeters).toBeCloseTo(1, 6);
  });

  it('follows a corrected corner and a typed spacing, and a rebuild keeps corner, note and own column', async () => {
    const book = await farm();
    const map = measured(SAMPLE_MAP);
    const first = compose(map, 'metric');
    const info = write(book, first);
    const before = Number(book.value('Map', 'B9'));
    const corner = book.values('Map').findIndex((row) => row[0] === 'North' && row[1] === 3) + 1;
    book.type('Map', `C${corner}`, '44.0012');
    expect(Number(book.value('Map', 'B9'))).toBeGreaterThan(before * 1.1);
    const posts = Number(book.value('Map', 'D9'));
    book.type('Map', 'B5', '4');
    expect(Number(book.value('Map', 'D9'))).toBeGreaterThan(posts * 1.8);
    book.type('Map', 'H10', '=stays text'.slice(1));
    book.type('Map', 'I8', 'soil');
    book.type('Map', 'I11', 'sand');
    book.type('Map', 'J8', 'twice');
    book.type('Map', 'J11', '=B11*2');

    const block = readAsWritten(book, info);
    const again = mapFromBlock(block);
    const remeasured = measureMap(
      again.shapes.map((shape) => ({ ...shape, role: guessRole(shape) })),
      4,
      3,
    );
    expect(remeasured.paddocks.map(({ name }) => name)).toEqual(map.paddocks.map(({ name }) => name));
    expect(remeasured.paddocks[3]?.holes).toHaveLength(1);
    // One paddock fewer, so that the rows below move up.
    const fewer = { ...remeasured, paddocks: remeasured.paddocks.slice(1) };
    writeAnew(book, MAP_BLOCK, info, (_, old) => compose(fewer, 'metric', keptInMap(old, 'metric')));
    const rows = book.values('Map');
    expect(rows[LIST_ROW - 1]?.[0]).toBe('Middle');
    expect(rows[LIST_ROW - 1]?.[7]).toBe('stays text');
    expect(rows[LIST_ROW]?.[8]).toBe('sand');
    // The table does not hold where water lies: the distance that stands there stays.
    expect(Number(block.values[LIST_ROW]?.[5])).toBeGreaterThan(0);
    expect(rows[LIST_ROW - 1]?.[5]).toBe(block.values[LIST_ROW]?.[5]);
    expect(Number(rows[LIST_ROW]?.[9])).toBeCloseTo(Number(rows[LIST_ROW]?.[1]) * 2, 9);
    expect(book.values('Farm')).toEqual([['My own notes']]);
  });

  it('serves as the paddock list of the rotation planner, without its corners', async () => {
    const book = await farm();
    const map = measured(SAMPLE_MAP);
    write(book, compose(map, 'US'));
    const overview = book.ask('overview') as { data: Overview };
    const tabs = book.ask('readTabs', { tabs: ['Map'] }) as { data: TabContent[] };
    const lists = findLists(tabs.data, overview.data.blocks);
    expect(lists).toHaveLength(1);
    const read = readPaddocks(tabs.data[0]!, lists[0] as unknown as PaddockList, 'US', false);
    expect(read.problems).toEqual([]);
    expect(read.paddocks.map(({ name }) => name)).toEqual(map.paddocks.map(({ name }) => name));
    read.paddocks.forEach((paddock, i) => {
      const wanted = map.paddocks[i]!;
      expect(paddock.areaSquareMeters / wanted.areaSquareMeters).toBeCloseTo(1, 6);
      expect((paddock.fenceLengthMeters ?? 0) / wanted.boundaryMeters).toBeCloseTo(1, 6);
      const names = (paddock.adjoins ?? []).map((at) => map.paddocks[at]?.name);
      expect(names).toEqual(wanted.adjoining);
    });
  });

  it('keeps names that look like formulas as text', async () => {
    const named = structuredClone(SAMPLE_MAP);
    named.features[0]!.properties.name = '=1+1';
    named.features[1]!.properties.name = '<b>"x"</b>';
    const book = await farm();
    write(book, compose(measured(named), 'US'));
    expect(book.formula('Map', 'A9')).toBe('');
    expect(String(book.value('Map', 'A9'))).toMatch(/=1\+1$/);
    expect(book.formula('Map', 'E10')).toBe('');
    expect(String(book.value('Map', 'E10'))).toMatch(/=1\+1, Pond field$/);
  });

  it('gives the same numbers under a decimal comma', async () => {
    const book = await openWorkbook({ tabs: { Farm: [[]] }, codeJs: await scriptText(), locale: 'de_DE' });
    const map = measured(SAMPLE_MAP);
    write(book, compose(map, 'metric'));
    expect(Number(book.value('Map', 'B9')) / (map.paddocks[0]!.areaSquareMeters / 10_000)).toBeCloseTo(1, 6);
  });

  it('writes the typed cells that it was given', () => {
    const notes = new Map([['North', text('=note')]]);
    const block = composeMapBlock({
      map: measured(SAMPLE_MAP),
      settings: { postSpacing: 8 },
      units: 'metric',
      origin: { row: 1, column: 1 },
      kept: { notes, toWater: new Map(), toWell: new Map(), added: NO_ADDED_COLUMNS },
    });
    expect(block.cells[LIST_ROW - 1]?.[7]).toEqual({ k: 't', v: '=note' });
    expect(block.cells[4]?.[1]).toEqual(numberCell(8));
  });
});
