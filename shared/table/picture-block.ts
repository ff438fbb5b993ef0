import { cellA1 } from '../block/a1';
import { number, text } from '../block/cells';
import { type BlockRow, composeBlock } from '../block/compose-block';
import { TITLES } from '../block/own-words';
import type { BlockCell, BlockRule, WireCell } from '../contract';
import { type Day, dayFromIso, isoFromDay, weekday } from '../core/calendar/day';
import { serialFromDay } from '../core/calendar/serial';
import { nameKey } from '../lists/read-list-cell';
import type { PlanPaddock } from '../plan/model';
import { isOpen } from '../plan/open-days';
import type { RotationBlockInput } from './model';
import type { Block } from './rotation-block';
import { tableRows } from './table-rows';

export type PictureInput = Pick<RotationBlockInput, 'problem' | 'plan' | 'settings' | 'corner' | 'past'>;

const NO_PIGS = '·';
const CLOSED = '×';
export const TITLE_BEGINS = TITLES.picture;
export const LEGEND_ENDS = `; ${NO_PIGS} no pigs, ${CLOSED} closed all week`;
/** Paper-light backgrounds that black letters are read on; they repeat after the eighth group. */
const COLOURS = ['#cfe2f3', '#fce5cd', '#d9ead3', '#ead1dc', '#fff2cc', '#d0e0e3', '#e6b8af', '#d9d2e9'];
const DAYS_A_WEEK = 7;
/** Short, so that a season fits on a screen; the title says the year. */
const WEEK_FORMAT = 'd mmm';
const NAME_WIDTH = 120;
const WEEK_WIDTH = 44;

/**
 * The season as a picture in cells: a row for each paddock, a column for each week from its Monday, the letters of
 * the groups that stand there in that week. Values only; the colours repeat what the letters say.
 */
export function pictureBlock(input: PictureInput): Block {
  const { problem, settings, corner } = input;
  const rows = tableRows(input);
  const { seasonStart, seasonEnd } = settings.rules;
  const first = Math.min(seasonStart, ...rows.map((row) => row.inDay));
  const weeks: Day[] = [];
  for (let monday = mondayOf(first); monday < seasonEnd; monday += DAYS_A_WEEK) weeks.push(monday);
  const letters = groupLetters(
    [...problem.groups, ...rows.map((row) => ({ name: row.group }))].map((g) => g.name),
  );
  const stays = new Map<string, typeof rows>();
  for (const row of rows) stays.set(nameKey(row.paddock), [...(stays.get(nameKey(row.paddock)) ?? []), row]);
  const weekCell = (paddock: PlanPaddock, monday: Day): BlockCell => {
    const here = (stays.get(nameKey(paddock.name)) ?? []).filter(
      (row) => row.inDay < monday + DAYS_A_WEEK && row.outDay > monday,
    );
    const marks = [...new Set(here.map((row) => letters.get(nameKey(row.group)) ?? '?'))];
    if (marks.length > 0) return text(marks.join(' '));
    return text(isClosed(paddock, monday) ? CLOSED : NO_PIGS);
  };
  const title = `${TITLE_BEGINS}${isoFromDay(seasonStart)} to ${isoFromDay(seasonEnd)}`;
  const legend = [...letters].map(([key, letter]) => `${letter} ${nameOf(key, input, rows)}`).join(', ');
  const body = problem.paddocks.map(
    (paddock): BlockRow => ({
      cells: [text(paddock.name), ...weeks.map((monday) => weekCell(paddock, monday))],
    }),
  );
  const heading: BlockRow = {
    cells: [text('Week from'), ...weeks.map((monday) => number(serialFromDay(monday), WEEK_FORMAT))],
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
    rules: letterRules([...letters.values()], corner, body.length, weeks.length),
    widths: [NAME_WIDTH, ...weeks.map(() => WEEK_WIDTH)],
    freezeRows: corner.row + 2,
  };
}

/** Whether a picture shows a season that was over before the one that begins on `seasonStart`. */
export function isEarlierPicture(
  [[title = ''] = []]: readonly (readonly WireCell[])[],
  seasonStart: Day,
): boolean {
  const end =
    typeof title === 'string' && title.startsWith(TITLE_BEGINS) ? dayFromIso(title.slice(-10)) : undefined;
  return end !== undefined && end <= seasonStart;
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

/** A letter for each group: the first of its name that is still free, else the next free one, else a number. */
export function groupLetters(names: readonly string[]): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  const taken = new Set<string>();
  for (const name of names) {
    if (letters.has(nameKey(name))) continue;
    const own = [...name.toUpperCase()].filter((letter) => /^[A-Z]$/.test(letter));
    const alphabet = Array.from({ length: 26 }, (_, i) => String.fromCharCode(65 + i));
    const free = [...own, ...alphabet].find((letter) => !taken.has(letter)) ?? String(letters.size + 1);
    taken.add(free);
    letters.set(nameKey(name), free);
  }
  return letters;
}

/** One rule for each letter; a week with two groups has the colour of the first. */
function letterRules(
  letters: readonly string[],
  corner: { row: number; column: number },
  rows: number,
  columns: number,
): BlockRule[] {
  if (rows === 0 || columns === 0) return [];
  const firstCell = cellA1(corner.row + 3, corner.column + 1);
  return letters.map((letter, i) => ({
    row: 3,
    column: 1,
    rows,
    columns,
    formula: `=ISNUMBER(SEARCH(" ${letter} ";" "&${firstCell}&" "))`,
    background: COLOURS[i % COLOURS.length]!,
  }));
}
