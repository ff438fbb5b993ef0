/** Feed, water, shelter and ground for one group in one paddock, stay after stay. SI units and litres, whole days. */
import type { Day } from '../../core/calendar/day';

/** A stay as planned, with what the figures need of its group and its paddock. */
export interface BudgetStay {
  readonly group: string;
  readonly paddock: string;
  readonly inDay: Day;
  readonly days: number;
  /** The most on any day of it, and the mean of its days. */
  readonly head: number;
  readonly meanHead: number;
  /** Weight when weighed, and days from then to the day the group comes in. */
  readonly startWeightKg: number;
  readonly growthDays: number;
  /** Absent: the growth table by weight band. */
  readonly dailyGainKg?: number;
  readonly areaSquareMeters: number;
  /** Row of the rotation table that the stay came from. */
  readonly rotationRow?: number;
}

export interface StayNeeds {
  readonly weightInKg: number;
  readonly weightOutKg: number;
  readonly feedKg: number;
  /** A day at the end of the stay, when the pigs are heaviest. */
  readonly waterLiters: number;
  readonly hotWaterLiters: number;
  readonly shelterSquareMeters: number;
  /** Dropped in the stay, kg/m². */
  readonly nitrogen: number;
  readonly phosphorus: number;
  readonly potassium: number;
}
