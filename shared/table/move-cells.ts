import { answer, BLANK, blank, date, formula, number, text } from '../block/cells';
import { dateCall } from '../block/date-call';
import { DAY_FORMAT } from '../block/day-format';
import type { BlockCell } from '../contract';
import type { Day } from '../core/calendar/day';
import type { GroupField, PaddockField } from '../lists/model';
import { herdOn } from '../plan/herd-on';
import { OPEN_DAYS } from '../plan/open-days';
import { restDue } from '../plan/rest-due';
import { fromInside, type Quantity } from '../units/units';
import { checkFormula } from './check-formula';
import type { ColumnKey } from './columns';
import { type HerdSource, herdFormulas, herdInStay } from './herd-formulas';
import { ifFilled, listLookup } from './list-lookup';
import { mostStayDays, type PastRow, type RotationBlockInput } from './model';
import {
  cellIn,
  densityFormula,
  dueOutFormula,
  growthDaysFormula,
  inDayFormula,
  keyFormula,
  lastOutFormula,
  loadFormula,
  outFormula,
  plannedInFormula,
  restBeforeFormula,
  restDueFormula,
  stayDaysFormula,
  type TableFrame,
} from './move-formulas';
import type { SettingKey } from './settings-rows';
import { daysIn, type TableRow } from './table-rows';

/** Nothing where the day is 0: never. */
const DATE_OR_NONE = 'yyyy-mm-dd;;';
const WHOLE = '0';
const THOUSANDS = '#,##0';
const TENTHS = '#,##0.0';
const PERCENT = '0%';

interface MoveContext {
  readonly input: RotationBlockInput;
  readonly frame: TableFrame;
  readonly rows: readonly TableRow[];
  readonly i: number;
  readonly setting: (key: SettingKey) => string | undefined;
}

/** As typed; of the stay that a group is in by the list, the day that the list says: it has happened. */
function movedIn({ input }: MoveContext, { past, groupIndex, paddockIndex, inDay }: TableRow): BlockCell {
  if (past?.movedIn !== undefined) return date(past.movedIn);
  const standing = past || groupIndex === undefined ? undefined : input.problem.groups[groupIndex]?.standing;
  const isIt = standing?.paddock === paddockIndex && standing?.since === inDay;
  return isIt ? date(inDay) : blank(DAY_FORMAT);
}

/** The cells of one move, by column. Weight, feed and water stay blank: they spill from above; cover and note are typed. */
export function moveCells(context: MoveContext): Record<ColumnKey, BlockCell> {
  const { frame, rows, i, setting } = context;
  const row = rows[i]!;
  const at = frame.anchorRow + 1 + i;
  const { past } = row;
  const days = past?.days ?? daysIn(row);
  const mostDays = Math.max(days, mostStayDays(context.input.settings.rules));
  return {
    group: text(row.group),
    paddock: text(row.paddock),
    plannedIn: plannedIn(context, at),
    movedIn: movedIn(context, row),
    days: number(days, WHOLE),
    out: formula(outFormula(frame, at), DAY_FORMAT),
    ...(past ? pastAmounts(context, past, at) : liveAmounts(context, row, at)),
    ...headInStay(context, past, at),
    weightIn: answer(WHOLE),
    density: formula(densityFormula(frame, at), THOUSANDS),
    load: formula(loadFormula(frame, at), THOUSANDS),
    restBefore: formula(restBeforeFormula(frame, at), WHOLE),
    restDue: restDueCell(context, row, at),
    check: formula(checkFormula(frame, at, { ...checkSettings(setting), mostDays })),
    feed: answer(THOUSANDS),
    water: answer(TENTHS),
    cover: blank(PERCENT),
    note: BLANK,
    inDay: formula(inDayFormula(frame, at), DAY_FORMAT),
    dueOut: formula(dueOutFormula(frame, at, days, mostDays), DAY_FORMAT),
    stayDays: formula(stayDaysFormula(frame, at), WHOLE),
    weightOut: answer(WHOLE),
    lastOut: formula(lastOutFormula(frame, at), DATE_OR_NONE),
    groupKey: formula(keyFormula(cellIn(frame, 'group', at))),
    paddockKey: formula(keyFormula(cellIn(frame, 'paddock', at))),
  };
}

function checkSettings(setting: MoveContext['setting']) {
  return {
    seasonStart: setting('seasonStart')!,
    seasonEnd: setting('seasonEnd')!,
    groundLimit: setting('groundLimit'),
  };
}

/**
 * What is past stands as a day. Every move to come has a formula, also where nothing above gives its day (a group's
 * first move, a gap in the plan), so that a day typed over it can be told.
 */
function plannedIn({ frame, rows, i }: MoveContext, at: number): BlockCell {
  const row = rows[i]!;
  if (row.past) return date(row.past.plannedIn ?? row.inDay);
  const planned = dateCall(row.inDay);
  const last = row.previous === undefined ? undefined : rows[row.previous];
  const due = last && last.inDay + (last.past?.days ?? last.outDay - last.inDay);
  return formula(due === row.inDay ? plannedInFormula(frame, at, planned) : `=${planned}`, DAY_FORMAT);
}

type OpenDays = Record<(typeof OPEN_DAYS)[number], BlockCell>;
type Amounts = OpenDays &
  Record<'head' | 'startWeight' | 'growthDays' | 'dailyGain' | 'area' | 'lastUsed', BlockCell>;

function openDays(cellOf: (field: (typeof OPEN_DAYS)[number]) => BlockCell): OpenDays {
  return Object.fromEntries(OPEN_DAYS.map((field) => [field, cellOf(field)])) as OpenDays;
}

/** The log that the table looks head and weight up in: one in its own units. */
function herdLog({ input: { sources, settings } }: MoveContext): HerdSource | undefined {
  return sources?.herd?.units === settings.unitSystem ? sources.herd : undefined;
}

/** How many there were over the stay, by the herd log; without one as they came in, or as they were counted. */
function headInStay(
  context: MoveContext,
  past: PastRow | undefined,
  row: number,
): Record<'herdSays' | 'meanHead' | 'mostHead', BlockCell> {
  const at = (key: ColumnKey): string => cellIn(context.frame, key, row);
  const log = herdLog(context);
  if (log) {
    const stay = { key: at('groupKey'), inDay: at('inDay'), out: at('out'), days: at('stayDays') };
    const { says, mean, most } = herdInStay(log, { ...stay, head: at('head') });
    return { herdSays: formula(says), meanHead: formula(mean, TENTHS), mostHead: formula(most, WHOLE) };
  }
  const counted = (value: number | undefined, format: string): BlockCell =>
    value === undefined || value === past?.head ? formula(`=${at('head')}`, format) : number(value, format);
  return {
    herdSays: BLANK,
    meanHead: counted(past?.meanHead, TENTHS),
    mostHead: counted(past?.mostHead, WHOLE),
  };
}

/**
 * What a move was counted with, frozen, where the herd log says nothing else; but the growth follows a day moved in that is
 * corrected later.
 */
function pastAmounts(context: MoveContext, past: PastRow, at: number): Amounts {
  const { input, frame } = context;
  const plain = (value: number | undefined, quantity: Quantity): BlockCell =>
    value === undefined ? BLANK : number(fromInside(value, quantity, input.settings.unitSystem));
  const day = (value: Day | undefined): BlockCell => (value === undefined ? BLANK : date(value));
  const { head, startWeightKg, growthDays } = past;
  const weighedOn = growthDays === undefined ? undefined : dateCall(past.inDay - Math.round(growthDays));
  const frozen = {
    head: head === undefined ? NOTHING : inFormula(head),
    weight:
      startWeightKg === undefined
        ? NOTHING
        : inFormula(fromInside(startWeightKg, 'mass', input.settings.unitSystem)),
    weighedOn: weighedOn ?? NOTHING,
    mayBeBlank: weighedOn === undefined,
  };
  return {
    ...herdAmounts(herdLog(context), frozen, frame, at),
    dailyGain: plain(past.dailyGainKg, 'massPerDay'),
    area: plain(past.areaSquareMeters, 'area'),
    ...openDays((field) => day(past[field])),
    lastUsed: day(past.lastUsed),
  };
}

/** Amounts of a planned move: looked up in the grower's lists where that is safe, else as values. */
function liveAmounts(context: MoveContext, row: TableRow, at: number): Amounts {
  const { input, frame } = context;
  const { problem, sources, settings } = input;
  const system = settings.unitSystem;
  const group = problem.groups[row.groupIndex!]!;
  const paddock = problem.paddocks[row.paddockIndex!]!;
  const ofGroup = (field: GroupField): string | undefined =>
    listLookup(sources?.groups, field, row.group, cellIn(frame, 'group', at), system, false);
  const ofPaddock = (field: PaddockField, mayBeBlank: boolean): string | undefined =>
    listLookup(sources?.paddocks, field, row.paddock, cellIn(frame, 'paddock', at), system, mayBeBlank);
  const cell = (lookup: string | undefined, value: number | undefined, quantity?: Quantity): BlockCell => {
    if (lookup) return formula(ifFilled(lookup));
    if (value === undefined) return BLANK;
    return number(quantity ? fromInside(value, quantity, system) : value);
  };
  const day = (field: PaddockField, value: Day | undefined): BlockCell => {
    const lookup = ofPaddock(field, true);
    if (lookup) return formula(ifFilled(lookup), DATE_OR_NONE);
    return value === undefined ? BLANK : date(value);
  };
  const weighedOn = ofGroup('weighedOn');
  const log = herdLog(context);
  const { head, weightKg, weighedOn: since } = log ? group : herdOn(group, row.inDay);
  const listed = (field: 'head' | 'weight', value: number): string => {
    const lookup = ofGroup(field);
    return lookup ? ifFilled(lookup).slice(1) : inFormula(value);
  };
  const counted = {
    head: listed('head', head),
    weight: listed('weight', fromInside(weightKg, 'mass', system)),
    weighedOn: weighedOn ?? dateCall(since),
    mayBeBlank: weighedOn !== undefined,
  };
  return {
    ...herdAmounts(log, counted, frame, at),
    dailyGain: cell(ofGroup('dailyGain'), group.dailyGainKg, 'massPerDay'),
    area: cell(ofPaddock('area', false), paddock.areaSquareMeters, 'area'),
    ...openDays((field) => day(field, paddock[field])),
    lastUsed: day('lastUsed', usedBefore(context, row)),
  };
}

/** In a formula, what stands for no figure. */
const NOTHING = '""';

/** Parts of formulas for what holds where there is no log, or where it says nothing yet. */
interface Otherwise {
  readonly head: string;
  readonly weight: string;
  readonly weighedOn: string;
  readonly mayBeBlank: boolean;
}

/** Head and weight by the herd log; none in a row without a day in, such as one that was skipped: nobody is there. */
function herdAmounts(
  log: HerdSource | undefined,
  otherwise: Otherwise,
  frame: TableFrame,
  at: number,
): Pick<Amounts, 'head' | 'startWeight' | 'growthDays'> {
  const inDay = cellIn(frame, 'inDay', at);
  const said = log && herdFormulas(log, cellIn(frame, 'groupKey', at), inDay);
  const { head, weight, weighedOn } = otherwise;
  const ofThoseIn = (figure: string): string => `=IF(ISNUMBER(${inDay});${figure};"")`;
  const day = said?.weighedOn(weighedOn) ?? weighedOn;
  return {
    head: formula(ofThoseIn(said?.head(head) ?? head), WHOLE),
    startWeight: formula(ofThoseIn(said?.weight(weight) ?? weight)),
    growthDays: formula(growthDaysFormula(frame, at, day, otherwise.mayBeBlank), WHOLE),
  };
}

/** A number as every locale reads it: no decimal sign. */
function inFormula(value: number): string {
  return `${Math.round(value * 10 ** 6)}/10^6`;
}

/** Last used before this table: what only the table's own past rows say, its formulas find by themselves. */
function usedBefore({ input, rows }: MoveContext, row: TableRow): Day | undefined {
  const lastUsed = input.problem.paddocks[row.paddockIndex!]?.lastUsed;
  const fromTable = rows.some(
    (other) => other.past && other.paddockIndex === row.paddockIndex && other.outDay === lastUsed,
  );
  return fromTable ? undefined : lastUsed;
}

/**
 * The rest due: the paddock's own; else by the settings cells, so that changing them shows at once. From forage
 * growth it is worked out here for the planned days, because no plain formula says it shortly.
 */
function restDueCell({ input, frame, rows, i, setting }: MoveContext, row: TableRow, at: number): BlockCell {
  const { rest } = input.settings.rules;
  const paddock = row.paddockIndex === undefined ? undefined : input.problem.paddocks[row.paddockIndex];
  if (paddock?.restDays !== undefined) {
    const own = String(restDue(paddock, rest, row.inDay));
    return formula(restDueFormula(frame, at, own, false), WHOLE);
  }
  if (rest.kind === 'fixed') return formula(restDueFormula(frame, at, setting('restDays')!, false), WHOLE);
  if (rest.kind === 'monthly')
    return formula(restDueFormula(frame, at, setting('restByMonth')!, true), WHOLE);
  const due = (days: number): BlockCell => formula(restDueFormula(frame, at, inFormula(days), false), WHOLE);
  if (row.past?.restDueDays !== undefined) return due(row.past.restDueDays);
  const left = rows.slice(0, i).reduce<number | undefined>((latest, other) => {
    const counts = other.paddock === row.paddock && other.outDay <= row.inDay;
    return counts ? Math.max(latest ?? other.outDay, other.outDay) : latest;
  }, paddock?.lastUsed);
  return left === undefined || !paddock ? BLANK : due(restDue(paddock, rest, left));
}
