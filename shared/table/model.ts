/**
 * The rotation table as plain data: what goes into the block and what is read back from it.
 *
 * Rows and columns count from 1, as in the spreadsheet. Amounts are in SI units inside; the block shows the
 * farm's units.
 */
import type { WireCell } from '../contract';
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

/** Where the block's corner goes. */
export interface Corner {
  readonly tab: string;
  readonly row: number;
  readonly column: number;
}

/** A cell kept as it stands: its value, its formula or '', and the row it stood in. */
export interface KeptCell {
  readonly value: WireCell;
  readonly formula: string;
  readonly sheetRow: number;
  /** Row and column in the old block, from 0. */
  readonly from?: readonly [row: number, column: number];
}

/** A column that the grower added inside the block. */
export interface ExtraColumn {
  readonly heading: string;
}

/** A column of the block: ours, or one that the grower added, by its place among the extra columns. */
export type BlockColumn = { readonly key: ColumnKey } | { readonly extra: number };

/** What the grower made of the table besides its moves. */
export interface OwnParts {
  readonly extraColumns: readonly ExtraColumn[];
  /** All columns from left to right, as they stand. */
  readonly columns: readonly BlockColumn[];
  /** The title, where it was typed over. */
  readonly title?: string;
  /** Headings that the grower typed over ours. */
  readonly headings?: ReadonlyMap<ColumnKey, KeptCell>;
  /** Rows above the headings, title and hint among them: a rebuild keeps the headings in their row. */
  readonly headRows: number;
  /** Cells typed above the headings, each with its place (`from`). */
  readonly headCells: readonly KeptCell[];
  /** Values of each setting, with the formulas that were typed there. */
  readonly settingCells: ReadonlyMap<string, readonly KeptCell[]>;
}

/** A value or a formula of the grower's where the table has a formula in other moves: "head 9". */
export interface TypedOver {
  readonly key: ColumnKey;
  readonly words: string;
  readonly cell: KeptCell;
  /** It stays in its cell; else it becomes a line below the table. */
  readonly stays: boolean;
}

export type LookedUp = Extract<ColumnKey, 'head' | 'startWeight' | 'growthDays' | 'dailyGain' | 'area'>;

/** One move as it stands in the block now. Absent: blank or not readable. */
export interface OldRow {
  readonly sheetRow: number;
  readonly group: string;
  readonly paddock: string;
  readonly plannedIn?: Day;
  readonly movedIn?: Day;
  readonly days?: number;
  /** Moved in if typed, else planned in. */
  readonly inDay?: Day;
  /** The day left, as the table shows it. */
  readonly out?: Day;
  readonly head?: number;
  /** What was typed over a formula that stands in other rows: "head 9". */
  readonly typedOver: readonly TypedOver[];
  readonly startWeightKg?: number;
  readonly growthDays?: number;
  readonly dailyGainKg?: number;
  readonly areaSquareMeters?: number;
  readonly openFrom?: Day;
  readonly openUntil?: Day;
  readonly lastUsed?: Day;
  readonly restDueDays?: number;
  /** Figures that formulas of the table look up in the lists, and that therefore change with them. */
  readonly lookups: readonly LookedUp[];
  /** Formulas of the grower's in cells where the builder writes a value or another formula. */
  readonly ownFormulas: Readonly<Partial<Record<ColumnKey, KeptCell>>>;
  readonly cover: KeptCell;
  readonly note: KeptCell;
  /** Cells of the extra columns, in their order. */
  readonly extras: readonly KeptCell[];
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
  /** Absent where the headings were not found. */
  readonly own?: OwnParts;
  /** Lines kept from earlier tables. */
  readonly keptLines: readonly string[];
  /** Things typed into the block that belong to no move: they become such lines. */
  readonly strays: readonly string[];
  readonly problems: readonly TableProblem[];
}

export interface RotationBlockInput {
  readonly problem: PlanProblem;
  readonly plan: Plan;
  readonly settings: RotationSettings;
  readonly corner: Corner;
  /** Sentences shown above the table. */
  readonly warnings: readonly string[];
  /** `herd`: the log, where there is one. */
  readonly sources?: ListSources & { readonly herd?: HerdSource };
  /** For a rebuild: what rebuildInput gives. */
  readonly own?: OwnParts | undefined;
  readonly past?: readonly PastRow[];
  readonly future?: readonly OldRow[];
  readonly keptLines?: readonly string[];
}
