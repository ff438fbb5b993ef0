import { alignColumns, markAt } from '../block/align-columns';
import { cellOnTab } from '../block/cell-on-tab';
import { idOf, SETTING_ROW } from '../block/compose-block';
import { BLANK_MARK, bareMark, isYours, markOfStanding } from '../block/memory';
import type { BlockContent } from '../block/read-block';
import type { RestRule } from '../plan/model';
import { OUTDOOR_FACTOR } from '../tables/nrc-intake';
import { toInside, type UnitSystem } from '../units/units';
import { DEFAULT_TEMPERATURE_C, type RotationSettings, type TableProblem } from './model';
import { isTypedAt } from './move-rows';
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
import {
  LISTS,
  REST_KINDS,
  SETTING_LABELS,
  SETTINGS_TITLE,
  type SettingKey,
  WEEKDAYS,
} from './settings-rows';

export interface SettingsRead {
  /** Undefined where the block holds no settings or some cannot be read: see problems. */
  readonly settings: RotationSettings | undefined;
  readonly problems: readonly TableProblem[];
}

/** The settings of a rotation block with its memory, from its cells; the grower may have changed them there. */
export function readSettings(block: BlockContent): SettingsRead {
  const { info } = block;
  const lines = settingLines(block);
  const problems: TableProblem[] = [];
  const read = <Value>(
    key: SettingKey,
    parse: (line: SettingLine | undefined) => Value,
  ): Value | undefined => {
    const line = lines.get(key);
    try {
      return parse(line);
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      const cell = line?.cells[0] ?? cellOnTab(info.tab, info.row, info.column);
      problems.push({ cell, sentence: `${cell}: ${SETTING_LABELS[key]} must ${error.message}` });
      return undefined;
    }
  };
  const unitSystem = read('units', (line) => sameUnits(line)) ?? 'US';
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

/** Row of the block, from 0, where the settings begin; −1 for none. */
export function settingsTitleRow({ values }: BlockContent): number {
  return values.findIndex((row) => row.includes(SETTINGS_TITLE));
}

/** The values of each setting, its row known by its id: a label may have been typed over. */
function settingLines(block: BlockContent): Map<SettingKey, SettingLine> {
  const { info, memory } = block;
  const columns = alignColumns(block);
  const [label, first] = [columns.indexOf(0), columns.indexOf(1)];
  const inOrder = [...columns.keys()].sort((a, b) => (columns[a] ?? Infinity) - (columns[b] ?? Infinity));
  const lines = new Map<SettingKey, SettingLine>();
  for (const [r, row] of block.values.entries()) {
    const { id = '', marks = [] } = memory?.rows[r] ?? {};
    const key = KEYS.find((one) => id.replace(/\.\d+$/, '') === idOf(SETTING_ROW + one));
    if (!key) continue;
    const cells = inOrder.flatMap((c) => {
      const [value, mark] = [row[c] ?? '', markAt(block, r, c)];
      const isOurs =
        c !== label && mark !== undefined && value !== '' && (key === 'noMoves' || isValue(mark));
      return isOurs ? [{ value, c, isTyped: isTypedAt(block, r, c, mark) }] : [];
    });
    // Where a list stands is ours to say: words typed there are none of it.
    if (LISTS.includes(key) && cells.some(({ isTyped }) => isTyped)) continue;
    const at = (c: number): string => cellOnTab(info.tab, info.row + r, info.column + c);
    const before = lines.get(key);
    lines.set(key, {
      values: [...(before?.values ?? []), ...cells.map(({ value }) => value)],
      cells: [...(before?.cells ?? []), ...cells.map(({ c }) => at(c)), at(first < 0 ? label + 1 : first)],
      isTyped: cells.some(({ isTyped }) => isTyped),
      was: marks[1] ?? '',
    });
  }
  return lines;
}

const KEYS = Object.keys(SETTING_LABELS) as SettingKey[];

/** Whether a value of the setting was written into a cell with that mark. */
function isValue(mark: string): boolean {
  return bareMark(mark) !== BLANK_MARK || isYours(mark);
}

/** Refuses other units typed into a table that stands: every figure in it is in the old ones. */
function sameUnits(line: SettingLine | undefined): UnitSystem {
  const units = unitsOf(line);
  const was = (['US', 'metric'] as const).find(
    (one) => markOfStanding(one, '') === bareMark(line?.was ?? ''),
  );
  if (was === undefined || was === units) return units;
  throw new Unreadable(
    `stay "${was}" while the table stands, ${got(line)}; choose other units in the sidebar`,
  );
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
  return limit === undefined ? {} : { groundLimit: toInside(limit, 'loadPerArea', system) };
}
