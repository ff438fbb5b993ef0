/** The settings of a rotation table as rows of label and values below it. Read back by readSettings. */
import { fixedA1 } from '../block/a1';
import { BLANK, date, number, text } from '../block/cells';
import { type BlockRow, SETTING_ROW } from '../block/compose-block';
import type { BlockCell, WireCell } from '../contract';
import { fieldsOfList, MEMORY_LABELS, rowsOfList } from '../lists/list-memory';
import type { GrowerList } from '../lists/model';
import { fromInside, symbolOf } from '../units/units';
import type { RotationSettings } from './model';
import { BEFORE_CHANGES } from './words';

/** Marks where the settings begin. */
export const SETTINGS_TITLE = 'Settings of this table';

/** Labels are what readSettings looks for; units in brackets behind them do not count. */
export const SETTING_LABELS = {
  units: 'Units',
  seasonStart: 'Season start',
  seasonEnd: 'Season end (last night is the one before)',
  rest: 'Rest',
  restDays: 'Rest in days',
  restByMonth: 'Rest in days, January first',
  growthByMonth: 'Growth a day, January first',
  growthNeeded: 'Growth needed',
  shortestStay: 'Shortest stay in days',
  longestStay: 'Longest stay in days',
  groundLimit: 'Ground limit',
  evenness: "Moves for the ground's sake",
  moveDays: 'Move days',
  noMoves: 'No moves on',
  temperature: 'Warm day for water',
  outdoorFactor: 'Outdoor feed factor',
  paddockList: MEMORY_LABELS.paddocks,
  groupList: MEMORY_LABELS.groups,
} as const;
export type SettingKey = keyof typeof SETTING_LABELS;

/** Settings that only say where a list stands: nothing to type. */
export const LISTS: readonly SettingKey[] = ['paddockList', 'groupList'];

/** The setting a label means, whatever stands in brackets behind it. */
export function settingOfLabel(label: WireCell): SettingKey | undefined {
  if (typeof label !== 'string') return undefined;
  const bare = (words: string): string => words.replace(/\s*\(.*$/, '').trim();
  const keys = Object.keys(SETTING_LABELS) as SettingKey[];
  return keys.find((key) => bare(SETTING_LABELS[key]) === bare(label));
}

export const REST_KINDS = { fixed: 'one number', monthly: 'by month', forage: 'from growth' } as const;
/** How much is moved for the ground's sake: the weight of even use in the score. The design of this tool (judgement). */
export const EVENNESS = { fewest: 0, some: 0.25, most: 1 } as const;
export type EvennessWord = keyof typeof EVENNESS;
export const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const DATES_A_ROW = 12;

export interface SettingsRows {
  readonly rows: readonly BlockRow[];
  /** Addresses of a setting's values, for formulas: "$B$120", or twelve of them with `;` between. */
  readonly address: (key: SettingKey) => string | undefined;
}

/** The rows, the first of them in sheet row `top` and column `left`. */
export function settingsRows(settings: RotationSettings, top: number, left: number): SettingsRows {
  const lines = settingLines(settings);
  const rows = lines.map(({ key, unit, values }): BlockRow => {
    const label = SETTING_LABELS[key] + (unit ? ` (${unit})` : '');
    const style = LISTS.includes(key) ? 'muted' : 'input';
    return {
      cells: [text(label), ...values],
      style: ['note', ...values.map(() => style)],
      id: SETTING_ROW + key,
    };
  });
  const title: BlockRow = {
    cells: [text(SETTINGS_TITLE), BLANK, text(BEFORE_CHANGES)],
    style: ['title', 'plain', 'muted'],
    id: SETTINGS_TITLE,
  };
  return {
    rows: [title, ...rows],
    address: (key) => {
      const at = lines.findIndex((line) => line.key === key);
      const cells = lines[at]?.values.map((_, i) => fixedA1(top + 1 + at, left + 1 + i)) ?? [];
      return cells.length === 0 ? undefined : cells.join(';');
    },
  };
}

interface Line {
  readonly key: SettingKey;
  readonly unit?: string;
  readonly values: readonly BlockCell[];
}

function settingLines({ unitSystem, rules, temperatureC, outdoorFactor, lists }: RotationSettings): Line[] {
  const limit = rules.groundLimit;
  const moveDays = WEEKDAYS.filter((_, i) => rules.moveWeekdays[i]).join(', ');
  return [
    { key: 'units', values: [text(unitSystem)] },
    { key: 'seasonStart', values: [date(rules.seasonStart)] },
    { key: 'seasonEnd', values: [date(rules.seasonEnd)] },
    ...restLines(rules.rest),
    { key: 'shortestStay', values: [number(rules.shortestStayDays)] },
    { key: 'longestStay', values: [number(rules.longestStayDays)] },
    ...(limit === undefined
      ? []
      : [
          {
            key: 'groundLimit' as const,
            unit: symbolOf('loadPerArea', unitSystem),
            values: [number(fromInside(limit, 'loadPerArea', unitSystem), '#,##0')],
          },
        ]),
    ...(rules.evenness === undefined
      ? []
      : [{ key: 'evenness' as const, values: [text(evennessWord(rules.evenness))] }]),
    { key: 'moveDays', values: [text(moveDays)] },
    ...inRows(rules.noMoveDays).map(
      (days): Line => ({ key: 'noMoves', values: days.map((day) => date(day)) }),
    ),
    {
      key: 'temperature',
      unit: symbolOf('temperature', unitSystem),
      values: [number(rounded(fromInside(temperatureC, 'temperature', unitSystem)))],
    },
    { key: 'outdoorFactor', values: [number(outdoorFactor)] },
    ...(lists.paddocks ? [listLine('paddockList', lists.paddocks)] : []),
    ...(lists.groups ? [listLine('groupList', lists.groups)] : []),
  ];
}

/** The word for the weight of even use; a table from before there was one was planned without. */
export function evennessWord(evenness = 0): EvennessWord {
  if (evenness <= 0) return 'fewest';
  return evenness < EVENNESS.most ? 'some' : 'most';
}

/** 20 °C is 68 °F, not 68.00000000000001. */
function rounded(value: number): number {
  return Number(value.toFixed(6));
}

function restLines(rest: RotationSettings['rules']['rest']): Line[] {
  const kind: Line = { key: 'rest', values: [text(REST_KINDS[rest.kind])] };
  const numbers = (values: readonly number[]): BlockCell[] => values.map((value) => number(value));
  if (rest.kind === 'fixed') return [kind, { key: 'restDays', values: numbers([rest.days]) }];
  if (rest.kind === 'monthly') return [kind, { key: 'restByMonth', values: numbers(rest.days) }];
  return [
    kind,
    { key: 'growthByMonth', values: numbers(rest.growth) },
    { key: 'growthNeeded', values: numbers([rest.needed]) },
  ];
}

function inRows(days: readonly number[]): number[][] {
  const rows: number[][] = [];
  for (let i = 0; i < days.length; i += DATES_A_ROW) rows.push(days.slice(i, i + DATES_A_ROW));
  return rows;
}

/** Tab, rows, then one cell a column: "area = C, ac: Acres". */
function listLine(key: SettingKey, list: GrowerList): Line {
  return { key, values: [list.tab, rowsOfList(list), ...fieldsOfList(list)].map(text) };
}
