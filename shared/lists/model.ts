/**
 * The grower's own lists as plain data: where a list stands and which column means what.
 *
 * The finder proposes it, the grower may change any part of it, the readers obey it. Rows and columns count
 * from 1, as in the spreadsheet.
 */
import type { TabContent } from '../contract';
import type { PlanGroup, PlanPaddock } from '../plan/model';
import type { ListUnit } from '../units/unit-words';

export const PADDOCK_FIELDS = [
  'name',
  'area',
  'width',
  'length',
  'openFrom',
  'openUntil',
  'shutFrom',
  'shutUntil',
  'lastUsed',
  'restDays',
  'adjoining',
  'fenceLength',
] as const;
export type PaddockField = (typeof PADDOCK_FIELDS)[number];

export const GROUP_FIELDS = [
  'name',
  'head',
  'weight',
  'weighedOn',
  'dailyGain',
  'from',
  'until',
  'untilWeight',
  'paddock',
  'since',
] as const;
export type GroupField = (typeof GROUP_FIELDS)[number];

export type ListKind = 'paddocks' | 'groups';

/** What each field is called in sentences. */
export const FIELD_LABELS: Readonly<Record<PaddockField | GroupField, string>> = {
  name: 'name',
  area: 'area',
  width: 'width',
  length: 'length',
  openFrom: 'open from',
  openUntil: 'open until',
  shutFrom: 'shut from',
  shutUntil: 'shut until',
  lastUsed: 'last used',
  restDays: 'rest',
  adjoining: 'adjoining paddocks',
  fenceLength: 'fence length',
  head: 'head',
  weight: 'weight',
  weighedOn: 'weighed on',
  dailyGain: 'daily gain',
  from: 'in the rotation from',
  until: 'until',
  untilWeight: 'weight at which it leaves',
  paddock: 'stands in now',
  since: 'there since',
};

export interface ListOf<Field extends string> {
  readonly tab: string;
  readonly headingRow: number;
  /** First and last row that may hold an item; blank rows and totals between them are left out on reading. */
  readonly firstRow: number;
  readonly lastRow: number;
  readonly columns: Readonly<Partial<Record<Field, number>>>;
  /** Words of the heading of each column when the table was built; the letters may have moved since. */
  readonly texts?: Readonly<Partial<Record<Field, string>>>;
  /** Unit of a column where the heading names one; else the farm's. */
  readonly units: Readonly<Partial<Record<Field, ListUnit>>>;
}
export interface PaddockList extends ListOf<PaddockField> {
  readonly kind: 'paddocks';
}
export interface GroupList extends ListOf<GroupField> {
  readonly kind: 'groups';
}
export type GrowerList = PaddockList | GroupList;

/** A proposed list with what the grower needs to judge or change it. */
export type FoundList = GrowerList & {
  /** Every heading of the row near the list, taken or not, for the choice of another column. */
  readonly headings: readonly { readonly column: number; readonly text: string }[];
  /** Required fields that no heading was found for. */
  readonly missing: readonly (PaddockField | GroupField)[];
  /** Columns that were a close choice: the grower is asked. */
  readonly doubts?: readonly Doubt[];
  /** Rows with a name, totals left out. */
  readonly items: number;
};

/** Two columns that may both be a field; `column` is the one that was taken. */
export interface Doubt {
  readonly field: PaddockField | GroupField;
  readonly column: number;
  readonly other: number;
}

/** Something wrong in the grower's sheet, with its cell. `sentence` begins with the cell. */
export interface ListProblem {
  readonly cell: string;
  readonly sentence: string;
}

export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

/** A paddock as read, with the cell each value came from. */
export interface ReadPaddock extends PlanPaddock {
  readonly fenceLengthMeters?: number;
  readonly cells: Readonly<Partial<Record<PaddockField, CellPlace>>>;
}

/** A group as read. `from` stays open where the list says nothing: the season start then. */
export interface ReadGroup extends Omit<PlanGroup, 'from' | 'standing'> {
  readonly from?: PlanGroup['from'];
  /** Where it stands now, as typed, and since when. */
  readonly standsIn?: { readonly paddock: string; readonly since?: PlanGroup['from'] };
  readonly cells: Readonly<Partial<Record<GroupField, CellPlace>>>;
}

/** A grower's list with the tab it stands on, for formulas that look things up there. */
export interface ListSource<List> {
  readonly tab: TabContent;
  readonly list: List;
  /** Cells that count as blank, because nothing could be read in them: no formula may look there. */
  readonly unread?: readonly string[];
}

/** The lists that something was worked out from. */
export interface ListSources {
  readonly paddocks?: ListSource<PaddockList>;
  readonly groups?: ListSource<GroupList>;
}
