/** Head and weight out of the herd log, as parts of plain formulas. */
import { MONTHS } from '../core/calendar/day-words';
import { symbolOf, type UnitSystem } from '../units/units';

/** Where the herd log stands: columns as "Herd!$B$6:$B$80", from its headings on. */
export interface HerdSource {
  readonly units: UnitSystem;
  readonly keys: string;
  readonly days: string;
  readonly heads: string;
  readonly weights: string;
  /** Head of a row less the one before it, and the same times its day. */
  readonly changes: string;
  readonly changeDays: string;
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
  const key = keyIn(keyCell);
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

/** The key of the log that the key of a table stands for. */
function keyIn(keyCell: string): string {
  return `"k"&TRIM(MID(${keyCell};2;${LONGEST_NAME}))`;
}

/** Cells of a stay: it lasts from `inDay` to before `out`, and begins with `head`. */
export interface StayCells {
  readonly key: string;
  readonly inDay: string;
  readonly out: string;
  readonly days: string;
  readonly head: string;
}

/**
 * What the log says of the days after the first of a stay, so that the whole stay counts as it was. Head-days: the first
 * head up to the first change, from then on what the log says.
 */
export function herdInStay(log: HerdSource, { key: keyCell, inDay, out, days, head }: StayCells) {
  const key = keyIn(keyCell);
  const own = `${log.keys};${key}`;
  const within = `${own};${log.days};">"&${inDay};${log.days};"<"&${out}`;
  const first = `MINIFS(${log.days};${within};${log.heads};">=0")`;
  const before = `SUMIFS(${log.changes};${own};${log.days};"<="&${inDay})`;
  const changed = `${out}*SUMIFS(${log.changes};${within})-SUMIFS(${log.changeDays};${within})`;
  const headDays = `${head}*(${first}-${inDay})+${before}*(${out}-${first})+${changed}`;
  const last = (figures: string, least: string, say: (figure: string) => string): string => {
    const on = `MAXIFS(${log.days};${within};${figures};"${least}")`;
    const figure = `MAXIFS(${figures};${own};${log.days};${on})`;
    return `IF(${on}>0;${say(figure)}&" "&DAY(${on})&" "&CHOOSE(MONTH(${on});${MONTHS.map((month) => `"${month}"`).join(';')})&" ";"")`;
  };
  const ifStay = (body: string): string =>
    `=IF(AND(ISNUMBER(${head});ISNUMBER(${days}));IF(${first}>0;${body};${head});"")`;
  return {
    mean: ifStay(`(${headDays})/${days}`),
    most: ifStay(`MAX(${head};MAXIFS(${log.heads};${within}))`),
    /** "7 head from 6 May, 78 lb on 8 May": the last of each kind. */
    says: `=IF(ISNUMBER(${days});TRIM(${last(log.heads, '>=0', (figure) => `${figure}&" head from"`)}&${last(log.weights, '>0', (figure) => `ROUND(${figure};0)&" ${symbolOf('mass', log.units)} on"`)});"")`,
  };
}
