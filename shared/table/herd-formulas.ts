/** Head and weight out of the herd log, as parts of plain formulas. */
import type { UnitSystem } from '../units/units';

/** Where the herd log stands: columns as "Herd!$B$6:$B$80", from its headings on. */
export interface HerdSource {
  readonly units: UnitSystem;
  readonly keys: string;
  readonly days: string;
  readonly heads: string;
  readonly weights: string;
  /** What its rows say, as text: to see whether they still say it when something is written. */
  readonly says: string;
}

const LONGEST_NAME = 500;

export interface HerdFormulas {
  /** Head from the last row of the log by that day that has one; else `otherwise`. */
  readonly head: (otherwise: string) => string;
  /** Weight as it was weighed last by that day, and the day of that; else `otherwise`. */
  readonly weight: (otherwise: string) => string;
  readonly weighedOn: (otherwise: string) => string;
}

/**
 * `keyCell`: cell of the group's key; spaces around the name do not count. `day`: a cell or TODAY(). Two figures on one day: the larger. No day: `otherwise`.
 */
export function herdFormulas(log: HerdSource, keyCell: string, day: string): HerdFormulas {
  const key = `"k"&TRIM(MID(${keyCell};2;${LONGEST_NAME}))`;
  const last = (figures: string, least: string): { any: string; on: string } => {
    const rows = `${log.keys};${key};${figures};"${least}";${log.days};"<="&${day}`;
    return { any: `IF(ISNUMBER(${day});COUNTIFS(${rows})>0;FALSE)`, on: `MAXIFS(${log.days};${rows})` };
  };
  const heads = last(log.heads, '>=0');
  const weights = last(log.weights, '>0');
  const then = (figures: string, on: string): string =>
    `MAXIFS(${figures};${log.keys};${key};${log.days};${on})`;
  return {
    head: (otherwise) => `IF(${heads.any};${then(log.heads, heads.on)};${otherwise})`,
    weight: (otherwise) => `IF(${weights.any};${then(log.weights, weights.on)};${otherwise})`,
    weighedOn: (otherwise) => `IF(${weights.any};${weights.on};${otherwise})`,
  };
}
