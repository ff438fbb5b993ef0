/**
 * The rotation table as plain data: what goes into the block and what is read back from it.
 *
 * Rows and columns count from 1, as in the spreadsheet. Amounts are in SI units inside; the block shows the
 * farm's units.
 */
import type { Day } from '../core/calendar/day';
import type { GroupList, ListSources, PaddockList } from '../lists/model';
import type { Plan, PlanProblem, PlanRules } from '../plan/model';
import type { UnitSystem } from '../units/units';
import type { ColumnKey } from './columns';
import type { HerdSource } from './herd-formulas';

/** What the table was built with. It stands in the block's cells, so that a copy of the file knows it. */
export interface RotationSettings {
  readonly unitSystem: UnitSystem;
  /** The rules as the grower chose them; seasonStart is the season's, also when the plan begins later. */
  readonly rules: PlanRules;
  /** Day temperature that the water is worked out for. */
  readonly temperatureC: number;
  /** Feed of outdoor pigs over indoor ones. */
  readonly outdoorFactor: number;
  readonly lists: { readonly paddocks?: PaddockList; readonly groups?: GroupList };
}

/** The default of WATER_NEEDED in the contract of the cell functions. */
export const DEFAULT_TEMPERATURE_C = 20;

/** Longest stay that can be typed: the season. Judgement. */
export function mostStayDays({ seasonStart, seasonEnd }: PlanRules): number {
  return seasonEnd - seasonStart;
}

export type LookedUp = Extract<ColumnKey, 'head' | 'startWeight' | 'growthDays' | 'dailyGain' | 'area'>;

/** One move as it stands in the block now. Absent: blank or not readable. */
export interface OldRow {
  readonly sheetRow: number;
  /** Of its row in the block's memory. */
  readonly id: string;
  readonly group: string;
  readonly paddock: string;
  readonly plannedIn?: Day;
  readonly movedIn?: Day;
  /** Those that the table counts with. */
  readonly days?: number;
  /** What was typed there that cannot be the days of a stay: no wish. */
  readonly badDays?: string;
  /** Moved in if typed, else planned in. */
  readonly inDay?: Day;
  /** The day left, as the table shows it. */
  readonly out?: Day;
  readonly head?: number;
  /** Head-days of the stay ÷ its days, and the most head on any day of it: where the herd log says that it changed. */
  readonly meanHead?: number;
  readonly mostHead?: number;
  readonly startWeightKg?: number;
  readonly growthDays?: number;
  readonly dailyGainKg?: number;
  readonly areaSquareMeters?: number;
  readonly openFrom?: Day;
  readonly openUntil?: Day;
  readonly shutFrom?: Day;
  readonly shutUntil?: Day;
  readonly lastUsed?: Day;
  readonly restDueDays?: number;
  /** Cover left, as a share of one. */
  readonly cover?: number;
  /** What stands there instead, where it is no such share. */
  readonly badCover?: string;
  /** Figures that formulas of the table look up in the lists, and that therefore change with them. */
  readonly lookups: readonly LookedUp[];
  /** It was still to come when the table was written. */
  readonly isLive?: boolean;
  /** Columns in which something stands that was not written there. */
  readonly typed: readonly ColumnKey[];
}

/** A past row with the day the group really left, or is planned to leave. */
export interface PastRow extends OldRow {
  readonly inDay: Day;
  readonly outDay: Day;
  /** Days as they stand in the table, where the group's next move gives others. */
  readonly daysBefore?: number;
}

export interface TableProblem {
  readonly cell: string;
  readonly sentence: string;
}

/** The block as it stands now. */
export interface OldRotation {
  readonly settings: RotationSettings | undefined;
  readonly rows: readonly OldRow[];
  /** Moves that were left out: no part of what happened, nor of what is to come. */
  readonly skipped: readonly OldRow[];
  /** Rows above the headings; absent where these were not found. */
  readonly headRows?: number;
  readonly problems: readonly TableProblem[];
}

export interface RotationBlockInput {
  readonly problem: PlanProblem;
  readonly plan: Plan;
  readonly settings: RotationSettings;
  /** The block's top left cell. */
  readonly corner: { readonly row: number; readonly column: number };
  /** Sentences shown above the table. */
  readonly warnings: readonly string[];
  /** `herd`: the log, where there is one. */
  readonly sources?: ListSources & { readonly herd?: HerdSource };
  /** Of the table that stands, so that a rebuild keeps the headings in their row. */
  readonly headRows?: number | undefined;
  /** For a rebuild: what rebuildInput gives. */
  readonly past?: readonly PastRow[];
  readonly future?: readonly OldRow[];
  readonly skipped?: readonly OldRow[];
}
