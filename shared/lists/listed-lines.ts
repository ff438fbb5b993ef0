/** A list in words, without headings: "Top field: 1.2 ac, rested since 3 Oct". What can be told of each line, to be made a list. */
import { text } from '../block/cells';
import { dateWords } from '../block/date-words';
import type { BlockCell, TabContent, WireCell } from '../contract';
import type { Day } from '../core/calendar/day';
import type { DateOrder } from '../locale/date-order';
import { LIST_UNITS, type ListQuantity, unitOfText } from '../units/unit-words';
import { type Gathered, listBeside } from './gathered-cells';
import { GROUP_WORDS } from './headings';
import { isBlankCell } from './list-rows';
import { plainWords } from './match-heading';
import type { CellPlace, ListKind } from './model';
import { amountsIn } from './read-list-cell';
import { onlyDayIn } from './remark-day';
import { SIDES } from './sides';
import * as words from './words';

interface Line {
  readonly row: number;
  readonly parts: readonly string[];
}

interface Habits {
  readonly comma: boolean;
  readonly order: DateOrder;
  readonly today: Day;
  readonly isPaddock: (text: string) => boolean;
}

/** Headings of the list that is made, by kind; what is told of a line in no other column stands in the last. */
const HEADINGS = {
  paddocks: ['Paddock', 'Area', 'Last used', 'Notes'],
  groups: ['Group', 'Head', 'Weight', 'Paddock', 'Notes'],
} as const;

/** The list that the lines round a cell make; undefined: one line, or none. */
export function listedLines(
  kind: ListKind,
  tab: TabContent,
  at: CellPlace,
  habits: Habits,
): Gathered | undefined {
  const lines = linesAt(tab, at);
  const rows = lines.map(({ parts }) =>
    kind === 'paddocks' ? paddockOf(parts, habits) : groupOf(parts, habits),
  );
  if (rows.length < FEWEST_LINES) return undefined;
  const cells: BlockCell[][] = [HEADINGS[kind].map(text), ...rows.map((row) => row.map(text))];
  const sentence = words.inWords(kind, tab.name, lines[0]!.row, lines[lines.length - 1]!.row);
  const said = rows.map(([name, ...known]) => `${name}: ${known.filter(Boolean).join(', ')}`);
  return { kind, ...listBeside(tab, lines[0]!.row, cells), sentence, said };
}

const FEWEST_LINES = 2;
/** What parts a line: not a comma or a stroke inside a number. */
const BETWEEN = /\s*[:;,=|–—]\s+|\s+-\s+/;

/** The rows without a blank one between them, and in each the cells side by side with the column; a title above is none. */
function linesAt({ values }: TabContent, { row, column }: CellPlace): Line[] {
  const cellAt = (r: number, c: number): WireCell => values[r - 1]?.[c - 1] ?? '';
  const [left, right] = [-1, 1].map((step) => {
    let c = column;
    while (!isBlankCell(cellAt(row, c + step)) && c + step > 0) c += step;
    return c;
  }) as [number, number];
  const lineAt = (r: number): WireCell[] =>
    Array.from({ length: right - left + 1 }, (_, i) => cellAt(r, left + i)).filter(
      (cell) => !isBlankCell(cell),
    );
  let [first, last] = [row, row];
  while (first > 1 && lineAt(first - 1).length > 0) first -= 1;
  while (lineAt(last + 1).length > 0) last += 1;
  const lines = Array.from({ length: last - first + 1 }, (_, i) => first + i)
    .map((r) => ({ row: r, parts: lineAt(r).flatMap(partsOf) }))
    .filter(({ parts }) => parts.some((part) => /\p{L}/u.test(part)));
  const begin = lines.findIndex(({ parts }) => parts.length > 1 || /\d/.test(parts[0]!));
  return begin < 0 ? [] : lines.slice(begin);
}

function partsOf(cell: WireCell): string[] {
  if (typeof cell === 'object') return [dateWords(cell.d)];
  return String(cell).trim().split(BETWEEN).filter(Boolean);
}

function isOf(quantity: ListQuantity): (unit: string) => boolean {
  return (unit) => {
    const known = unit === '' ? undefined : unitOfText(unit, true);
    return known !== undefined && LIST_UNITS[known].quantity === quantity;
  };
}

/** Name, area, what has a day that is past, and the rest. */
function paddockOf([first = '', ...parts]: readonly string[], { comma, order, today }: Habits): string[] {
  const areas = amountsIn([first, ...parts].join(' ; '), comma, isOf('area'));
  const area = areas.length === 1 ? areas[0]! : (parts.find((part) => SIDES.test(part)) ?? '');
  const others = parts.filter((part) => part !== area);
  const used = others.find((part) => (onlyDayIn(part, order, today) ?? Infinity) <= today) ?? '';
  return [nameBefore(first, area), area, used, others.filter((part) => part !== used).join('; ')];
}

/** Name, head, weight, paddock and the rest. */
function groupOf([first = '', ...parts]: readonly string[], { comma, isPaddock }: Habits): string[] {
  const line = [first, ...parts].join(' ; ');
  const only = (is: (unit: string) => boolean): string => {
    const [amount = '', ...others] = amountsIn(line, comma, is);
    return others.length === 0 ? amount : '';
  };
  const head = only(isHeadWord) || (parts.find((part) => /^\d{1,4}$/.test(part)) ?? '');
  const amount = only(isOf('mass'));
  // The day of weighing may stand behind it.
  const weight = parts.find((part) => amount !== '' && part.startsWith(amount)) ?? amount;
  const place = parts.find(isPaddock) ?? '';
  const rest = parts.filter((part) => ![head, weight, place].includes(part));
  return [nameBefore(first, head, amount), head, weight, place, rest.join('; ')];
}

function isHeadWord(unit: string): boolean {
  return unit !== '' && GROUP_WORDS.head.includes(plainWords(unit));
}

/** What stands before the first of the amounts, where one is in the same part. */
function nameBefore(part: string, ...amounts: readonly string[]): string {
  const at = amounts.map((amount) => (amount === '' ? -1 : part.indexOf(amount))).filter((one) => one > 0);
  return part.slice(0, Math.min(part.length, ...at)).trim();
}
