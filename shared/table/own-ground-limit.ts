import { groundLimit } from '../core/rotation/ground-limit';
import { Refusal } from '../refusals';
import type { PastRow } from './model';
import { pastLoad } from './past-load';

/** GROUND_LIMIT asks for as many records. */
const FEWEST_RECORDS = 3;
/** At least three quarters of the ground covered: the default of GROUND_LIMIT. */
const TARGET_COVER = 0.75;

export interface OwnGroundLimit {
  /** Stays with a cover typed that could be used. */
  readonly records: number;
  /** kg·days/m²; undefined where the records are too few or cover does not fall as the load rises. */
  readonly limit: number | undefined;
  /** Lowest and highest limit when each record in turn is left out; from four records on. */
  readonly spread: readonly [number, number] | undefined;
}

interface GroundRecord {
  readonly load: number;
  readonly cover: number;
}

/**
 * The farm's own ground limit from the cover that was typed after its stays.
 *
 * The load of a stay is that of pastLoad. Cover must be more than 0 and at most 1 (75 % is 0.75); other rows are
 * passed over. The spread by leaving out one record at a time shows how much the limit hangs on single stays
 * (judgement: no confidence interval).
 */
export function ownGroundLimit(past: readonly PastRow[]): OwnGroundLimit {
  const records = past.flatMap(recordOf);
  const others = records.map((_, left) => limitOf(records.filter((__, i) => i !== left)));
  const known = others.filter((limit): limit is number => limit !== undefined);
  return {
    records: records.length,
    limit: limitOf(records),
    spread: known.length > 0 ? [Math.min(...known), Math.max(...known)] : undefined,
  };
}

function limitOf(records: readonly GroundRecord[]): number | undefined {
  if (records.length < FEWEST_RECORDS) return undefined;
  try {
    const loads = records.map(({ load }) => load);
    const covers = records.map(({ cover }) => cover);
    return groundLimit(loads, covers, TARGET_COVER);
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

function recordOf(row: PastRow): GroundRecord[] {
  const { cover } = row;
  if (cover === undefined || cover <= 0 || cover > 1) return [];
  const load = pastLoad(row) ?? 0;
  return load > 0 ? [{ load, cover }] : [];
}
