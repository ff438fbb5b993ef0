import { cellA1 } from '../block/a1';
import { blank, number, text } from '../block/cells';
import { type BlockRow, composeBlock } from '../block/compose-block';
import { TITLES } from '../block/own-words';
import type { BlockCell, BlockRule, WireCell } from '../contract';
import { type Day, isoFromDay, weekday } from '../core/calendar/day';
import { serialFromDay } from '../core/calendar/serial';
import { nameKey } from '../lists/read-list-cell';
import type { PlanPaddock } from '../plan/model';
import { isOpen } from '../plan/open-days';
import { fromInside, symbolOf, type UnitSystem } from '../units/units';
import { type GroupMark, groupMarks } from './group-marks';
import type { RotationBlockInput } from './model';
import { ownDay } from './own-cell';
import type { Block } from './rotation-block';
import { type SeasonUse, seasonUse } from './season-use';
import { tableRows } from './table-rows';

export type PictureInput = Pick<RotationBlockInput, 'problem' | 'plan' | 'settings' | 'corner' | 'past'>;

const NO_PIGS = '·';
const CLOSED = '×';
export const LEGEND_ENDS = `; ${NO_PIGS} no pigs, ${CLOSED} closed all week`;
const DAYS_A_WEEK = 7;
/** Short, so that a season fits on a screen; the title says the year. */
const WEEK_FORMAT = 'd mmm';
/** For those who look for its table. */
export const WEEK_HEADING = 'Week from';
const STAYS_HEADING = 'Stays';
export const COVER_HEADING = 'Cover left';
const BAR = '■';
const BAR_LENGTH = 10;
const USE_WIDTHS = [50, 50, 100, 110, 80];
const NAME_WIDTH = 120;
const WEEK_WIDTH = 44;

/**
 * The season as a picture in cells: a row for each paddock, a column for each week from its Monday, the letters of
 * the groups that stand there in that week, and how hard it was used by plan and record. Values only; the colours repeat
 * what the letters say.
 */
export function pictureBlock(input: PictureInput): Block {
  const { problem, plan, settings, corner, past = [] } = input;
  const rows = tableRows(input);
  const { seasonStart, seasonEnd } = settings.rules;
  const first = Math.min(seasonStart, ...rows.map((row) => row.inDay));
  const weeks: Day[] = [];
  for (let monday = mondayOf(first); monday < seasonEnd; monday += DAYS_A_WEEK) weeks.push(monday);
  const groups = groupMarks(
    [...problem.groups, ...rows.map((row) => ({ name: row.group }))].map((g) => g.name),
  );
  const stays = new Map<string, typeof rows>();
  for (const row of rows) stays.set(nameKey(row.paddock), [...(stays.get(nameKey(row.paddock)) ?? []), row]);
  const weekCell = (paddock: PlanPaddock, monday: Day): BlockCell => {
    const here = (stays.get(nameKey(paddock.name)) ?? []).filter(
      (row) => row.inDay < monday + DAYS_A_WEEK && row.outDay > monday,
    );
    const marks = [...new Set(here.map((row) => groups.get(nameKey(row.group))?.letter ?? '?'))];
    if (marks.length > 0) return text(marks.join(' '));
    return text(isClosed(paddock, monday) ? CLOSED : NO_PIGS);
  };
  const years = [...new Set([first, seasonEnd - 1].map((day) => isoFromDay(day).slice(0, 4)))];
  const title = TITLES.picture + years.join(' and ');
  const legend = [...groups].map(([key, { letter }]) => `${letter} ${nameOf(key, input, rows)}`).join(', ');
  const use = useCells(seasonUse(problem, plan, past), settings.unitSystem);
  const body = problem.paddocks.map(
    (paddock, p): BlockRow => ({
      cells: [text(paddock.name), ...weeks.map((monday) => weekCell(paddock, monday)), ...use[p]!],
    }),
  );
  const heading: BlockRow = {
    cells: [
      text(WEEK_HEADING),
      ...weeks.map((monday) => number(serialFromDay(monday), WEEK_FORMAT)),
      ...useHeadings(settings.unitSystem).map(text),
    ],
    style: 'heading',
  };
  const lines: BlockRow[] = [
    { cells: [text(title)], style: 'title' },
    { cells: [text(`${legend}${LEGEND_ENDS}`)], style: 'muted' },
    heading,
    ...body,
  ];
  return {
    ...composeBlock(lines),
    rules: letterRules([...groups.values()], corner, body.length, weeks.length),
    widths: [NAME_WIDTH, ...weeks.map(() => WEEK_WIDTH), ...USE_WIDTHS],
    freezeRows: corner.row + 2,
  };
}

function useHeadings(units: UnitSystem): readonly string[] {
  return [STAYS_HEADING, 'Days', `Load (${symbolOf('loadPerArea', units)})`, 'How hard', COVER_HEADING];
}

/** How hard each paddock was used: as numbers, and as a bar against the hardest. */
function useCells(use: readonly SeasonUse[], units: UnitSystem): readonly (readonly BlockCell[])[] {
  const most = Math.max(...use.map(({ load }) => load));
  return use.map(({ stays, days, load, cover }) => [
    number(stays, '0'),
    number(days, '0'),
    number(Math.round(fromInside(load, 'loadPerArea', units)), '#,##0'),
    text(BAR.repeat(most > 0 ? Math.round((BAR_LENGTH * load) / most) : 0)),
    cover === undefined ? blank('0%') : number(cover, '0%'),
  ]);
}

/**
 * Whether a picture shows a season that was over before the one that begins on `seasonStart`. Each week's heading says which
 * the last one is, so that one that was typed over does no harm.
 */
export function isEarlierPicture(values: readonly (readonly WireCell[])[], seasonStart: Day): boolean {
  const headings = values.find(([first]) => first === WEEK_HEADING) ?? [];
  const weeks = headings.map(ownDay);
  const last = Math.max(headings.indexOf(STAYS_HEADING) - 1, ...weeks.map((day, w) => (day ? w : 0)));
  const lastWeeks = weeks.flatMap((day, w) => (day === undefined ? [] : [day + DAYS_A_WEEK * (last - w)]));
  return lastWeeks.length > 0 && Math.max(...lastWeeks) < seasonStart;
}

function mondayOf(day: Day): Day {
  return day - ((weekday(day) + 6) % DAYS_A_WEEK);
}

function isClosed(paddock: PlanPaddock, monday: Day): boolean {
  return Array.from({ length: DAYS_A_WEEK }, (_, d) => monday + d).every((day) => !isOpen(paddock, day));
}

function nameOf(key: string, { problem }: PictureInput, rows: readonly { group: string }[]): string {
  const group = problem.groups.find(({ name }) => nameKey(name) === key);
  return group?.name ?? rows.find((row) => nameKey(row.group) === key)?.group ?? key;
}

/** One rule for each letter; a week with two groups has the colour of the first. */
function letterRules(
  marks: readonly GroupMark[],
  corner: { row: number; column: number },
  rows: number,
  columns: number,
): BlockRule[] {
  if (rows === 0 || columns === 0) return [];
  const firstCell = cellA1(corner.row + 3, corner.column + 1);
  return marks.map(({ letter, colour }) => ({
    row: 3,
    column: 1,
    rows,
    columns,
    formula: `=ISNUMBER(SEARCH(" ${letter} ";" "&${firstCell}&" "))`,
    background: colour,
  }));
}
