import { cellOnTab } from '../block/cell-on-tab';
import { type BlockContent, cutBlock } from '../block/read-block';
import type { BlockInfo, TabContent, WireCell } from '../contract';
import type { RestRule } from '../plan/model';
import { OUTDOOR_FACTOR } from '../tables/nrc-intake';
import { toInside, type UnitSystem } from '../units/units';
import { keptAt } from './kept-at';
import { DEFAULT_TEMPERATURE_C, type OwnParts, type RotationSettings, type TableProblem } from './model';
import { savedLists } from './saved-lists';
import {
  dateOf,
  datesOf,
  evennessOf,
  got,
  numberOf,
  type SettingLine,
  twelve,
  Unreadable,
  unitsOf,
  weekdaysOf,
} from './setting-values';
import { REST_KINDS, SETTING_LABELS, SETTINGS_TITLE, type SettingKey, WEEKDAYS } from './settings-rows';

export interface SettingsRead {
  /** Undefined where the block holds no settings or some cannot be read: see problems. */
  readonly settings: RotationSettings | undefined;
  readonly problems: readonly TableProblem[];
}

/** The settings that a rotation block was built with, from its cells; the grower may have changed them there. */
export function readSettings(tab: TabContent, info: BlockInfo): SettingsRead {
  const lines = settingLines(cutBlock(tab, info));
  if (!lines) {
    const cell = titleCell(cutBlock(tab, info));
    return {
      settings: undefined,
      problems: [
        {
          cell,
          sentence: `${cell}: above the settings of the table must stand "${SETTINGS_TITLE}", got none`,
        },
      ],
    };
  }
  const problems: TableProblem[] = [];
  const stranger = strangeLabel(cutBlock(tab, info));
  const read = <Value>(
    key: SettingKey,
    parse: (line: SettingLine | undefined) => Value,
  ): Value | undefined => {
    const line = lines.get(key);
    try {
      return parse(line);
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      const cell = line?.cells[0] ?? stranger ?? cellOnTab(info.tab, info.row, info.column);
      problems.push({ cell, sentence: `${cell}: ${SETTING_LABELS[key]} must ${error.message}` });
      return undefined;
    }
  };
  const unitSystem = read('units', unitsOf) ?? 'US';
  const settings: RotationSettings = {
    unitSystem,
    rules: {
      rest: restOf(read) ?? { kind: 'fixed', days: 0 },
      shortestStayDays: read('shortestStay', (line) => numberOf(line, 1)) ?? 1,
      longestStayDays: read('longestStay', (line) => numberOf(line, 1)) ?? 1,
      ...withLimit(
        lines.has('groundLimit') ? read('groundLimit', (line) => numberOf(line, 0)) : undefined,
        unitSystem,
      ),
      // A table from before there was this setting goes on without it.
      ...(lines.has('evenness') && { evenness: read('evenness', evennessOf) ?? 0 }),
      moveWeekdays: read('moveDays', weekdaysOf) ?? WEEKDAYS.map(() => true),
      noMoveDays: read('noMoves', datesOf) ?? [],
      seasonStart: read('seasonStart', dateOf) ?? 0,
      seasonEnd: read('seasonEnd', dateOf) ?? 0,
    },
    temperatureC: lines.has('temperature')
      ? toInside(read('temperature', (line) => numberOf(line, -100)) ?? 0, 'temperature', unitSystem)
      : DEFAULT_TEMPERATURE_C,
    outdoorFactor: lines.has('outdoorFactor')
      ? (read('outdoorFactor', (line) => numberOf(line, 0)) ?? 0)
      : OUTDOOR_FACTOR,
    lists: savedLists(lines),
  };
  return { settings: problems.length === 0 ? settings : undefined, problems };
}

/** Where the title of the settings belongs: above the first label; the table's first cell where there is no label. */
function titleCell({ info, values }: BlockContent): string {
  const row = values.findIndex((cells) => cells.some((cell) => settingOfLabel(cell) !== undefined));
  const column = values[row]?.findIndex((cell) => settingOfLabel(cell) !== undefined) ?? 0;
  return cellOnTab(info.tab, info.row + Math.max(0, row - 1), info.column + column);
}

/** The first cell in the column of the labels that is none of ours: where a label is missing, it was typed over. */
function strangeLabel(block: BlockContent): string | undefined {
  const top = settingsTitleRow(block);
  const column = block.values[top]?.indexOf(SETTINGS_TITLE) ?? -1;
  const at = block.values.findIndex(
    (row, r) => r > top && row[column] !== '' && settingOfLabel(row[column] ?? '') === undefined,
  );
  return at < 0 ? undefined : cellOnTab(block.info.tab, block.info.row + at, block.info.column + column);
}

/** Values of each setting as they stand, with the formulas that were typed there. */
export function settingCells(block: BlockContent): OwnParts['settingCells'] {
  return new Map([...(settingLines(block) ?? [])].map(([key, { kept }]) => [key, kept]));
}

/** Row of the block, from 0, where the settings begin; −1 for none. */
export function settingsTitleRow({ values }: BlockContent): number {
  return values.findIndex((row) => row.includes(SETTINGS_TITLE));
}

/** The setting a label means, whatever stands in brackets behind it. */
export function settingOfLabel(label: WireCell): SettingKey | undefined {
  if (typeof label !== 'string') return undefined;
  const bare = (text: string): string => text.replace(/\s*\(.*$/, '').trim();
  const keys = Object.keys(SETTING_LABELS) as SettingKey[];
  return keys.find((key) => bare(SETTING_LABELS[key]) === bare(label));
}

function settingLines(block: BlockContent): Map<SettingKey, SettingLine> | undefined {
  const top = settingsTitleRow(block);
  if (top < 0) return undefined;
  const labelColumn = block.values[top]!.indexOf(SETTINGS_TITLE);
  const lines = new Map<SettingKey, SettingLine>();
  for (const [r, row] of block.values.entries()) {
    const key = r > top ? settingOfLabel(row[labelColumn]!) : undefined;
    if (!key) continue;
    const filled = row.flatMap((value, c) => (c > labelColumn && value !== '' ? [{ value, c }] : []));
    const at = (c: number): string => cellOnTab(block.info.tab, block.info.row + r, block.info.column + c);
    const before = lines.get(key);
    lines.set(key, {
      values: [...(before?.values ?? []), ...filled.map(({ value }) => value)],
      cells: [...(before?.cells ?? []), ...filled.map(({ c }) => at(c)), at(labelColumn + 1)],
      kept: [...(before?.kept ?? []), ...filled.map(({ c }) => keptAt(block, r, c))],
    });
  }
  return lines;
}

type Read = <Value>(key: SettingKey, parse: (line: SettingLine | undefined) => Value) => Value | undefined;

function restOf(read: Read): RestRule | undefined {
  const kind = read('rest', (line) => {
    const text = String(line?.values[0] ?? '');
    const found = (['fixed', 'monthly', 'forage'] as const).find((one) => REST_KINDS[one] === text);
    if (!found)
      throw new Unreadable(
        `be ${Object.values(REST_KINDS)
          .map((k) => `"${k}"`)
          .join(' or ')}, ${got(line)}`,
      );
    return found;
  });
  if (kind === undefined) return undefined;
  if (kind === 'fixed') return { kind, days: read('restDays', (line) => numberOf(line, 0)) ?? 0 };
  if (kind === 'monthly') return { kind, days: read('restByMonth', twelve) ?? [] };
  const growth = read('growthByMonth', twelve) ?? [];
  return { kind, growth, needed: read('growthNeeded', (line) => numberOf(line, 0)) ?? 0 };
}

function withLimit(limit: number | undefined, system: UnitSystem): { groundLimit?: number } {
  return limit === undefined ? {} : { groundLimit: toInside(limit, 'massPerArea', system) };
}
