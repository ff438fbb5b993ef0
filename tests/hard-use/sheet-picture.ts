/** Everything that stands in a workbook outside one rectangle, to be compared before and after, character by character. */
import type { BlockInfo } from '../../shared/contract';
import type { Workbook } from '../../src/headless';

interface Exported {
  readonly sheets: readonly {
    readonly id: string;
    readonly name: string;
    readonly rows: unknown;
    readonly merges: unknown;
    readonly conditionalFormats: readonly { readonly ranges: readonly string[] }[];
    readonly dataValidationRules: unknown;
    readonly tables: readonly { readonly range: string }[];
  }[];
}

/**
 * Contents (values as typed, formulas), number formats, looks, merges, hidden rows, filters, validation and notes of
 * every cell, and every value that shows. `without` is left out: our own block.
 */
export function sheetPicture(workbook: Workbook, without?: BlockInfo): string {
  const { book } = workbook.state;
  const file = book.snapshot() as Exported;
  const tabs = file.sheets.flatMap((sheet) => {
    const isHome = sheet.name === without?.tab;
    const isOurs = (place: string): boolean => isHome && isWithin(place, without);
    const cells = cellsOf(workbook, sheet.id, sheet.name).filter(([place]) => !isOurs(place));
    const notes = [...(workbook.state.notes.get(sheet.id) ?? [])];
    const rules = sheet.conditionalFormats.filter(
      ({ ranges }) => !(isHome && ranges.every((range) => placesOf(range).every(isOurs))),
    );
    // Our own new tab: nothing of the grower's stands there.
    if (isHome && cells.length === 0 && notes.length === 0 && rules.length === 0) return [];
    const { merges, rows, dataValidationRules, tables } = sheet;
    // The engine stretches a filter over what is written beside it, so only its corner is compared.
    const filters = tables.map(({ range }) => range.split(':')[0]);
    return [[sheet.name, cells, merges, hiddenRows(rows), rules, dataValidationRules, filters, notes]];
  });
  return tabs
    .flatMap(([name, cells, ...rest]) => [
      ...(cells as unknown[]).map((cell) => JSON.stringify([name, cell])),
      JSON.stringify([name, rest]),
    ])
    .join('\n');
}

/** The lines that differ between two pictures; empty where nothing does. */
export function differences(before: string, after: string): string[] {
  if (before === after) return [];
  const [old, now] = [before.split('\n'), after.split('\n')];
  const [was, is] = [new Set(old), new Set(now)];
  return [
    ...old.filter((line) => !is.has(line)).map((line) => `lost ${line}`),
    ...now.filter((line) => !was.has(line)).map((line) => `new ${line}`),
  ];
}

/** Place, content as typed, number format, look, what shows. */
function cellsOf(workbook: Workbook, sheetId: string, name: string): [string, ...unknown[]][] {
  const { book } = workbook.state;
  const { getters } = book.model;
  const places = new Map<string, unknown[]>();
  for (const stored of getters.getCells(sheetId)) {
    const { row, col } = getters.getCellPosition(stored.id);
    const content = stored.isFormula ? book.formula(sheetId, row, col) : stored.content;
    const format = stored.format ?? '';
    const look = looks(book.style(sheetId, row, col));
    if (content === '' && format === '' && Object.keys(look).length === 0) continue;
    places.set(placeName(row, col), [content, format, look]);
  }
  workbook.values(name).forEach((row, r) => {
    row.forEach((value, c) => {
      const place = placeName(r, c);
      if (value !== '') places.set(place, [...(places.get(place) ?? ['', '', {}]), value]);
    });
  });
  return [...places]
    .map(([place, parts]): [string, ...unknown[]] => [place, ...parts])
    .sort(([a], [b]) => (a < b ? -1 : 1));
}

/** Looks that differ from how a new cell looks; the engine drops the others when it saves. */
function looks(style: object): object {
  return Object.fromEntries(
    Object.entries(style).filter(([, value]) => value !== false && value !== 'overflow'),
  );
}

function hiddenRows(rows: unknown): string[] {
  return Object.entries((rows ?? {}) as Record<string, { isHidden?: boolean }>).flatMap(
    ([row, { isHidden }]) => (isHidden ? [row] : []),
  );
}

function placesOf(zone: string): string[] {
  const [from, to] = zone.split(':').map(placeOf);
  if (!from) return [];
  const end = to ?? from;
  const places: string[] = [];
  for (let row = from.row; row <= end.row; row++)
    for (let column = from.column; column <= end.column; column++) places.push(placeName(row, column));
  return places;
}

function placeOf(a1: string): { row: number; column: number } {
  const [, letters = '', digits = ''] = /^\$?([A-Z]+)\$?(\d+)$/.exec(a1) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
}

function placeName(row: number, column: number): string {
  const letters = (n: number): string =>
    n >= 0 ? letters(Math.floor(n / 26) - 1) + String.fromCharCode(65 + (n % 26)) : '';
  return `${letters(column)}${row + 1}`;
}

function isWithin(a1: string, block: BlockInfo | undefined): boolean {
  if (!block) return false;
  const { row, column } = placeOf(a1);
  const [r, c] = [row - block.row + 1, column - block.column + 1];
  return r >= 0 && r < block.rows && c >= 0 && c < block.columns;
}
