import type { ColumnKey } from './columns';
import { type At, isStayDaysFormula, type TableFrame, windows } from './move-formulas';
import { MOST_DAYS_FROM_PLAN } from './moved-in-fault';
import { isSkippedFormula } from './skipped';

/** Addresses of the settings cells that the check reads, and the longest stay. */
export interface CheckSettings {
  readonly seasonStart: string;
  readonly seasonEnd: string;
  readonly groundLimit: string | undefined;
  readonly mostDays: number;
}

/** What is wrong with a move, in words; empty where all is well. The first of these that is true. */
export function checkFormula(frame: TableFrame, row: number, settings: CheckSettings): string {
  const { at, above, around } = windows(frame, row);
  const isNumber = (key: ColumnKey): string => `ISNUMBER(${at(key)})`;
  const others = `COUNTIFS(${around('paddockKey')};${at('paddockKey')};${around('inDay')};"<="&${at('inDay')};${around('out')};">"&${at('inDay')})`;
  const early = `IF(${isNumber('openFrom')};${at('inDay')}<${at('openFrom')};FALSE)`;
  const late = `IF(${isNumber('openUntil')};IF(${at('openUntil')}>0;${at('out')}-1>${at('openUntil')};FALSE);FALSE)`;
  const isShutDay = (key: ColumnKey): string => `IF(${isNumber(key)};${at(key)}>0;FALSE)`;
  const shutEnds = `IF(${isShutDay('shutUntil')};${at('inDay')}<=${at('shutUntil')};${isShutDay('shutFrom')})`;
  const shut = `IF(${isShutDay('shutFrom')};IF(${at('out')}>${at('shutFrom')};${shutEnds};FALSE);${shutEnds})`;
  const rested = `IF(AND(${isNumber('restBefore')};${isNumber('restDue')});${at('restBefore')}>=${at('restDue')};TRUE)`;
  const rules: [string, string][] = [
    [isSkippedFormula(at('movedIn')), '""'],
    [`ISTEXT(${at('movedIn')})`, `"${CHECKS.notADate}"`],
    [`NOT(${isNumber('inDay')})`, `"${CHECKS.noIn}"`],
    [`NOT(${isStayDaysFormula(at('days'), settings.mostDays)})`, `"${CHECKS.badDays} ${settings.mostDays}"`],
    ...movedInRules(at, row === frame.anchorRow + 1 ? undefined : above, settings),
    [`NOT(${isNumber('area')})`, `"${CHECKS.noArea}"`],
    [`${at('out')}<=${at('inDay')}`, `"${CHECKS.outBeforeIn}"`],
    [`${others}>1`, `"${CHECKS.occupied}"`],
    [`OR(${early};${late};${shut})`, `"${CHECKS.closed}"`],
    [
      `NOT(${rested})`,
      `"${CHECKS.short} "&${at('restBefore')}&" of "&${at('restDue')}&IF(${at('restDue')}=1;" day";" days")`,
    ],
  ];
  const rest = settings.groundLimit === undefined ? '""' : overLimit(at, settings.groundLimit);
  return `=${rules.reduceRight((otherwise, [when, says]) => `IF(${when};${says};${otherwise})`, rest)}`;
}

export const CHECKS = {
  notADate: 'Moved in must be a date',
  noIn: 'Type the day moved in',
  badDays: 'Days must be a whole number from 1 to',
  afterSeason: 'Moved in after the season end',
  farFromPlan: `Moved in over ${MOST_DAYS_FROM_PLAN} days from plan`,
  beforeLastMove: 'Moved in before the move above',
  noArea: 'Paddock or its area not in your list',
  outBeforeIn: 'Out must be after in',
  occupied: 'Still occupied',
  closed: 'Closed on these days',
  short: 'Rest',
  overLimit: 'Over the ground limit',
} as const;

/**
 * A typed day against the season, the day planned and the group's typed moves above: the same rules as movedInFault.
 * Every part guards itself, for AND reads all its arguments.
 */
function movedInRules(
  at: At,
  above: At | undefined,
  { seasonStart, seasonEnd }: CheckSettings,
): [string, string][] {
  const inDay = at('inDay');
  const planned = at('plannedIn');
  const ifTyped = (test: string): string => `IF(ISNUMBER(${at('movedIn')});${test};FALSE)`;
  const inSeason = `AND(${planned}>=${seasonStart};${planned}<=${seasonEnd})`;
  const far = `IF(ISNUMBER(${planned});IF(${inSeason};ABS(${inDay}-${planned})>${MOST_DAYS_FROM_PLAN};FALSE);FALSE)`;
  const rules: [string, string][] = [
    [ifTyped(`${inDay}>${seasonEnd}`), `"${CHECKS.afterSeason}"`],
    [ifTyped(far), `"${CHECKS.farFromPlan}"`],
  ];
  // The first move has nothing above, and a range of one cell is what the preview's engine mixes up with a cell.
  if (!above) return rules;
  const later = `${above('inDay')};">"&${inDay};${above('inDay')};"<="&${seasonEnd}`;
  const planEarlier = `${above('plannedIn')};"<="&${planned}`;
  const typedAbove = `${above('groupKey')};${at('groupKey')};${above('movedIn')};">0"`;
  const isEarly = `COUNTIFS(${typedAbove};${later};${planEarlier})>0`;
  return [...rules, [ifTyped(isEarly), `"${CHECKS.beforeLastMove}"`]];
}

/** Rounding that the ground limit forgives, as parts in a thousand. */
const FORGIVEN = { limit: 1001, load: 1000 } as const;

function overLimit(at: At, groundLimit: string): string {
  const over = `${at('load')}*${FORGIVEN.load}>${groundLimit}*${FORGIVEN.limit}`;
  return `IF(ISNUMBER(${at('load')});IF(${over};"${CHECKS.overLimit}";"");"")`;
}
