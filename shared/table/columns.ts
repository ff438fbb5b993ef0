/** The columns of the rotation table, in their order. Reading finds them by label, whatever stands in brackets. */
import { DAY_WIDTH } from '../block/day-format';
import { MOVE_KEYS } from '../block/own-words';
import type { BlockStyle } from '../contract';
import { type Quantity, symbolOf, type UnitSystem } from '../units/units';

interface Column {
  readonly key: string;
  readonly label: string;
  readonly quantity?: Quantity;
  /** Unit in words where it is no quantity of ours. */
  readonly unit?: string;
  readonly style: BlockStyle;
  readonly width: number;
}

const NUMBER_WIDTH = 80;
/** Both stay in sight: on a phone 390 pixels wide half of it is left to scroll. */
const NAME = { style: 'name', width: 72 } as const;
/** Columns that are frozen with the headings. */
export const FROZEN_COLUMNS = 2;
const SENTENCE_WIDTH = 170;
const INPUT = { style: 'input' } as const;
const PLAIN = { style: 'plain' } as const;
const WORKING = { style: 'working', width: DAY_WIDTH } as const;

export const COLUMNS = [
  { key: 'group', label: 'Group', ...NAME },
  { key: 'paddock', label: 'Paddock', ...NAME },
  { key: 'plannedIn', label: 'Planned in', ...PLAIN, width: DAY_WIDTH },
  { key: 'movedIn', label: 'Moved in', ...INPUT, width: DAY_WIDTH },
  { key: 'days', label: 'Days', ...INPUT, width: NUMBER_WIDTH },
  { key: 'out', label: 'Out', ...PLAIN, width: DAY_WIDTH },
  { key: 'head', label: 'Head', ...PLAIN, width: NUMBER_WIDTH },
  { key: 'herdSays', label: 'Herd log', ...PLAIN, width: SENTENCE_WIDTH },
  { key: 'weightIn', label: 'Weight in', quantity: 'mass', ...PLAIN, width: NUMBER_WIDTH },
  { key: 'density', label: 'Liveweight', quantity: 'massPerArea', ...PLAIN, width: DAY_WIDTH },
  { key: 'load', label: 'Load', quantity: 'loadPerArea', ...PLAIN, width: NUMBER_WIDTH },
  { key: 'restBefore', label: 'Rest before', unit: 'days', ...PLAIN, width: NUMBER_WIDTH },
  { key: 'restDue', label: 'Rest due', unit: 'days', ...PLAIN, width: NUMBER_WIDTH },
  { key: 'check', label: 'Check', ...PLAIN, width: SENTENCE_WIDTH },
  { key: 'feed', label: 'Feed for the stay', quantity: 'mass', ...PLAIN, width: NUMBER_WIDTH },
  { key: 'water', label: 'Water', quantity: 'volumePerDay', ...PLAIN, width: NUMBER_WIDTH },
  { key: 'cover', label: 'Cover left', ...INPUT, width: NUMBER_WIDTH },
  { key: 'note', label: 'Note', ...INPUT, width: SENTENCE_WIDTH },
  { key: 'inDay', label: 'In', ...WORKING },
  { key: 'dueOut', label: 'In + days', ...WORKING },
  { key: 'stayDays', label: 'In to out', unit: 'days', ...WORKING },
  { key: 'meanHead', label: 'Mean head', ...WORKING },
  { key: 'mostHead', label: 'Most head', ...WORKING },
  { key: 'weightOut', label: 'Weight out', quantity: 'mass', ...WORKING },
  { key: 'lastOut', label: 'Last left', ...WORKING },
  { key: 'groupKey', label: MOVE_KEYS.group, ...WORKING },
  { key: 'paddockKey', label: MOVE_KEYS.paddock, ...WORKING },
  { key: 'startWeight', label: 'Weighed', quantity: 'mass', ...WORKING },
  { key: 'growthDays', label: 'Since weighed', unit: 'days', ...WORKING },
  { key: 'dailyGain', label: 'Daily gain', quantity: 'massPerDay', ...WORKING },
  { key: 'area', label: 'Area', quantity: 'area', ...WORKING },
  { key: 'openFrom', label: 'Open from', ...WORKING },
  { key: 'openUntil', label: 'Open until', ...WORKING },
  { key: 'shutFrom', label: 'Shut from', ...WORKING },
  { key: 'shutUntil', label: 'Shut until', ...WORKING },
  { key: 'lastUsed', label: 'Used before', ...WORKING },
] as const satisfies readonly Column[];

export type ColumnKey = (typeof COLUMNS)[number]['key'];

/** Heading of a column with its unit in brackets. */
export function headingOf(column: Column, system: UnitSystem): string {
  const unit = column.quantity ? symbolOf(column.quantity, system) : column.unit;
  return unit ? `${column.label} (${unit})` : column.label;
}

/** The column that a heading of the block means; undefined for a heading that is not ours. */
export function columnOfHeading(heading: string): ColumnKey | undefined {
  const label = heading.replace(/\s*\([^)]*\)\s*$/, '').trim();
  return COLUMNS.find((column) => column.label === label)?.key;
}
