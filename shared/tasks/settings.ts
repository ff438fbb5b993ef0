/**
 * Settings of a task: numbers that stand as typed cells in the task's own block, so that changing a cell changes
 * everything that hangs on it, with or without the script.
 */

import { cellA1 } from '../block/a1';
import { BLANK, number, text } from '../block/cells';
import { SETTING_ROW } from '../block/compose-block';
import type { BlockContent } from '../block/read-block';
import type { BlockCell, WireCell } from '../contract';
import { describeCell, least, most, Refusal, type Words } from '../refusals';
import { type Quantity, symbolOf, toInside, type UnitSystem } from '../units/units';
import type { Draft } from './draft-block';
import * as words from './words';

export interface SettingSpec<Key extends string = string> {
  readonly key: Key;
  /** Stands in the sheet; a rebuild finds the typed value by it. */
  readonly label: string;
  readonly quantity?: Quantity;
  /** Unit in words where it is not a quantity of ours. */
  readonly unit?: string;
  /** In cell units. Absent: blank until typed. */
  readonly start?: number | Readonly<Record<UnitSystem, number>>;
  /** Start value that follows from the other values, all in cell units. */
  readonly follows?: (values: Readonly<Partial<Record<string, number>>>, units: UnitSystem) => number;
  /** What it is and where the start value comes from, with its certainty. */
  readonly note: string | Readonly<Record<UnitSystem, string>>;
  /** Limits in cell units where there is no quantity, else in inside units. `above` excludes the limit. */
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
  readonly whole?: true;
  /** May be left blank. */
  readonly optional?: true;
}

/** Values in cell units; undefined is blank. */
export type SettingValues<Key extends string = string> = Readonly<Record<Key, number | undefined>>;

export function startSettings<Key extends string>(
  specs: readonly SettingSpec<Key>[],
  units: UnitSystem,
  known: Partial<SettingValues<Key>> = {},
): SettingValues<Key> {
  const entries = specs.map(({ key, start }) => [key, typeof start === 'object' ? start[units] : start]);
  const values: Readonly<Partial<Record<string, number>>> = { ...Object.fromEntries(entries), ...known };
  const following = specs.flatMap(({ key, follows }) =>
    follows && !(key in known) ? [[key, follows(values, units)]] : [],
  );
  return { ...values, ...Object.fromEntries(following) } as SettingValues<Key>;
}

/** What stands beside a setting, in the units of the farm. */
export function settingNote({ note }: Pick<SettingSpec, 'note'>, units: UnitSystem): string {
  return typeof note === 'string' ? note : note[units];
}

/** Unit of a setting as it stands beside its value. */
export function settingUnit(spec: Pick<SettingSpec, 'quantity' | 'unit'>, units: UnitSystem): string {
  return spec.quantity ? symbolOf(spec.quantity, units) : (spec.unit ?? '');
}

/** One sentence for each setting that is missing or out of its limits. */
export function settingProblems<Key extends string>(
  specs: readonly SettingSpec<Key>[],
  values: SettingValues<Key>,
  units: UnitSystem,
): readonly { key: Key; sentence: string }[] {
  return specs.flatMap((spec) => {
    const must = broken(spec, values[spec.key], units);
    if (must === undefined) return [];
    const got = values[spec.key] === undefined ? 'a blank' : describeCell(values[spec.key]);
    const sentence = new Refusal(spec.label, must, got).sentence('', units).slice(2);
    return [{ key: spec.key, sentence }];
  });
}

function broken(spec: SettingSpec, value: number | undefined, units: UnitSystem): Words | undefined {
  if (value === undefined) return spec.optional ? undefined : 'be a number';
  if (!Number.isFinite(value)) return 'be a number';
  if (spec.unit === '%' && value > 0 && value < 1) return 'be 0, or 1 or more (ten per cent is 10 here)';
  const inside = spec.quantity ? toInside(value, spec.quantity, units) : value;
  const show = (limit: number, side: typeof least) =>
    spec.quantity ? side(limit, spec.quantity) : String(limit);
  if (spec.above !== undefined && !(inside > spec.above)) return ['be more than ', show(spec.above, least)];
  if (spec.whole && !Number.isInteger(inside)) return 'be a whole number';
  if (spec.min !== undefined && inside < spec.min) return ['be ', show(spec.min, least), ' or more'];
  if (spec.max !== undefined && inside > spec.max) return ['be ', show(spec.max, most), ' or less'];
  return undefined;
}

/** Values in inside units (SI and litres). */
export function insideSettings<Key extends string>(
  specs: readonly SettingSpec<Key>[],
  values: SettingValues<Key>,
  units: UnitSystem,
): SettingValues<Key> {
  const entries = specs.map(({ key, quantity }) => {
    const value = values[key];
    return [key, value === undefined || !quantity ? value : toInside(value, quantity, units)];
  });
  return Object.fromEntries(entries) as SettingValues<Key>;
}

/** A measure that is not whole to two decimals (5 ft 4 in) shows one; the cell keeps them all. */
function measureFormat(value: number): string | undefined {
  return value === Number(value.toFixed(2)) ? undefined : '0.0';
}

/** Adds one row a setting (label, value, unit, note) and returns the fixed address of each value. */
export function addSettings<Key extends string>(
  draft: Draft,
  specs: readonly SettingSpec<Key>[],
  values: SettingValues<Key>,
  units: UnitSystem,
): Readonly<Record<Key, string>> {
  const entries = specs.map((spec) => {
    const value = values[spec.key];
    const cells: BlockCell[] = [
      text(spec.label),
      value === undefined ? BLANK : number(value, spec.quantity && measureFormat(value)),
      text(settingUnit(spec, units)),
      text(settingNote(spec, units)),
    ];
    const row = draft.add(cells, ['plain', 'input', 'muted', 'muted'], `${SETTING_ROW}${spec.label}`);
    return [spec.key, draft.fixed(row, 1)];
  });
  return Object.fromEntries(entries) as Record<Key, string>;
}

export interface SettingsRead<Key extends string> {
  readonly values: Partial<Record<Key, number | undefined>>;
  /** Cells that hold something that is not a number. */
  readonly problems: readonly string[];
}

/** Reads the settings of a block that stands already. A setting that is not found there is left out. */
export function readSettings<Key extends string>(
  block: BlockContent,
  specs: readonly SettingSpec<Key>[],
): SettingsRead<Key> {
  const values: Partial<Record<Key, number | undefined>> = {};
  const problems: string[] = [];
  for (const { key, label } of specs) {
    const at = block.values.findIndex((row) => row[0] === label);
    const cell = block.values[at]?.[1];
    if (at < 0) continue;
    if (cell === '' || cell === undefined) values[key] = undefined;
    else if (typeof cell === 'number') values[key] = cell;
    else if (isNumberAsText(cell)) values[key] = Number(cell);
    else {
      const where = `${block.info.tab}!${cellA1(block.info.row + at, block.info.column + 1)}`;
      const got = typeof cell === 'object' ? 'a date' : describeCell(cell);
      problems.push(words.mustBeNumber(where, label, got));
    }
  }
  return { values, problems };
}

/** A cell in the format "plain text" keeps a number as text, and will again however often it is typed. */
function isNumberAsText(cell: WireCell): boolean {
  return typeof cell === 'string' && /^\s*-?\d+(\.\d+)?\s*$/.test(cell);
}

export const UNITS_LABEL = 'Units of this table';

/** A row that says which units the block is in, so that a rebuild stays in them. */
export function addUnits(draft: Draft, units: UnitSystem): void {
  draft.add(
    [text(UNITS_LABEL), text(units), BLANK, text(words.NEW_TAB_FOR_UNITS)],
    ['plain', 'plain', 'muted', 'muted'],
  );
}

export function readUnits(block: BlockContent): UnitSystem | undefined {
  const cell = block.values.find((row) => row[0] === UNITS_LABEL)?.[1];
  return cell === 'US' || cell === 'metric' ? cell : undefined;
}
