/** The columns of the stays, and where their cells may look things up. */
import { STAY_KEYS } from '../../block/own-words';
import type { GroupList, ListSource, PaddockList } from '../../lists/model';
import type { Quantity, UnitSystem } from '../../units/units';
import type { Draft } from '../draft-block';
import type { BudgetKey } from './budget-settings';

/** Where the stays come from: cells of the rotation table, or the grower's lists. */
export interface StaySource {
  /** Column letters of the rotation table by what they hold, and its tab. */
  readonly rotation?: {
    readonly tab: string;
    readonly columns: Readonly<Partial<Record<LinkedColumn, string>>>;
  };
  readonly paddocks?: ListSource<PaddockList>;
  readonly groups?: ListSource<GroupList>;
}
export type LinkedColumn =
  | 'group'
  | 'paddock'
  | 'inDay'
  | 'stayDays'
  | 'mostHead'
  | 'meanHead'
  | 'startWeight'
  | 'growthDays'
  | 'dailyGain'
  | 'area';

export const STAY_HEADINGS = [
  'Group',
  STAY_KEYS.inDay,
  'In',
  'Days',
  'Out',
  'Head',
  'Mean head',
  'Weighed',
  STAY_KEYS.weighed,
  'Daily gain',
  'Area',
  'Weight in',
  'Weight out',
  'Mean weight',
  'Feed',
  'Water a day',
  'Hot day',
  'Shelter floor',
  'N',
  'P',
  'K',
] as const;
export type StayHeading = (typeof STAY_HEADINGS)[number];
export const AT = Object.fromEntries(STAY_HEADINGS.map((heading, at) => [heading, at])) as Record<
  StayHeading,
  number
>;

/**
 * Numbers for the sums over all stays, 0 where a stay has none: an array product over a column with one text or blank in
 * it is an error for every month. "Pigs counted": its group's most head, shared out evenly over the group's stays.
 * "Of all": what the groups that are out on the stay's first day drink together.
 */
export const COUNTED_HEADINGS = [
  'Counted in',
  'Counted out',
  'Feed a day',
  'Water counted',
  'Area counted',
  'Head counted',
  'Gain counted',
  'Pigs counted',
  'Water of all',
  'Hot day of all',
] as const;
export type CountedHeading = (typeof COUNTED_HEADINGS)[number];
export const COUNTED_AT = Object.fromEntries(
  COUNTED_HEADINGS.map((heading, at) => [heading, STAY_HEADINGS.length + at]),
) as Record<CountedHeading, number>;

export const UNITS: Partial<Record<StayHeading, Quantity>> = {
  Weighed: 'mass',
  'Daily gain': 'massPerDay',
  Area: 'area',
  'Weight in': 'mass',
  'Weight out': 'mass',
  'Mean weight': 'mass',
  Feed: 'mass',
  'Water a day': 'volumePerDay',
  'Hot day': 'volumePerDay',
  'Shelter floor': 'floorArea',
  N: 'massPerArea',
  P: 'massPerArea',
  K: 'massPerArea',
};

/** Ranges of the finished columns, for sums over them. */
export type StayColumns = Readonly<Record<StayHeading | CountedHeading, string>>;

/** Formats of the columns that cell functions spill over. */
export const FORMATS = {
  'Weight in': '0',
  'Weight out': '0',
  Feed: '#,##0',
  'Water a day': '#,##0',
  'Hot day': '#,##0',
  'Shelter floor': '#,##0.0',
  N: '0.0',
  P: '0.0',
  K: '0.0',
} as const;
export const SPILLED = ['Feed', 'Water a day', 'Hot day', 'Shelter floor', 'N', 'P', 'K'] as const;

export interface StaysOn {
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly source: StaySource;
  readonly set: Readonly<Record<BudgetKey, string>>;
}
