import { formula } from '../block/cells';
import type { BlockCell } from '../contract';
import type { UnitSystem } from '../units/units';
import type { ColumnKey } from './columns';
import { rangeIn, type TableFrame } from './move-formulas';
import type { SettingKey } from './settings-rows';

/** Columns that a cell function fills. */
export const SPILLED: readonly ColumnKey[] = ['weightIn', 'weightOut', 'feed', 'water'];

/**
 * Weight in and out, feed and water: one cell function each, over the whole column. They stand in the blank row above the
 * first move, where their own answer is a blank, and spill over the moves.
 */
export function functionCells(
  frame: TableFrame,
  system: UnitSystem,
  setting: (key: SettingKey) => string | undefined,
): Partial<Record<ColumnKey, BlockCell>> {
  const column = (key: ColumnKey): string => rangeIn(frame, key, frame.anchorRow, frame.lastRow);
  const units = `"${system}"`;
  const gain = column('dailyGain');
  const weight = column('weightIn');
  return {
    weightIn: formula(`=PIG_WEIGHT(${column('startWeight')};${column('growthDays')};${gain};${units})`, '0'),
    weightOut: formula(`=PIG_WEIGHT(${weight};${column('stayDays')};${gain};${units})`, '0'),
    feed: formula(
      `=FEED_NEEDED(${column('meanHead')};${weight};${column('stayDays')};${gain};${setting('outdoorFactor')};${units})`,
      '#,##0',
    ),
    water: formula(
      `=WATER_NEEDED(${column('head')};${weight};${setting('temperature')};${units})`,
      '#,##0.0',
    ),
  };
}
