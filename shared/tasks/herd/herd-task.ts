import { alignColumns } from '../../block/align-columns';
import { text } from '../../block/cells';
import { matchRows } from '../../block/match-rows';
import type { BlockContent } from '../../block/read-block';
import { dayFromIso } from '../../core/calendar/day';
import { amountWords } from '../../lists/amount-words';
import type { ReadGroup } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import { HEAVIEST_KG } from '../../lists/weighing-notes';
import { type RenamedGroup, renamedGroup } from '../../table/renamed-group';
import { GROWING_LIGHTEST_KG } from '../../tables/growing-weights';
import { textAmount } from '../../units/text-amount';
import type { UnitSystem } from '../../units/units';
import { asking } from '../ask';
import { askRenamed } from '../renaming';
import type { TableRoom } from '../room-to-type';
import { textOf } from '../rows-between';
import type { Task } from '../task';
import { HERD_BLOCK, type HerdEntry, type HerdRow, herdBlock, herdRow } from './herd-block';
import { type HerdRead, readHerd } from './read-herd';
import * as words from './words';

export const CHANGE_LABELS = {
  group: 'Group that has changed',
  day: 'From which day on',
  head: 'Head from then on',
  weight: 'Weight each, if weighed',
  note: 'Note',
} as const;

/** More than any group behind one fence. Judgement. */
const MOST_HEAD = 5000;

interface HerdPlan {
  readonly rows: readonly HerdRow[];
  readonly units: UnitSystem;
  readonly room: TableRoom;
}

/** The herd log, a first row for each group of the list that is not in it yet, and one change more. */
export const HERD_TASK = {
  name: HERD_BLOCK,
  what: 'the herd log',
  tabName: 'Herd log',
  next: words.PLAN_NEXT,
  read: (book, answers) => {
    const ask = asking(book, answers, HERD_BLOCK, 'down');
    const units = ask.units();
    const log = ask.block && readHerd(ask.block);
    const { groups, notes, sources, wrong } = ask.lists(['groups'], units);
    const names = groups.map(({ name }) => name);
    const typed = ask.texts(CHANGE_LABELS, { group: names[0] ?? '', day: book.overview.today });
    const read = readChange(typed, units, ask.comma);
    const problem = 'problem' in read ? read.problem : undefined;
    if (names.length === 0) ask.wrong([words.NO_GROUP_LIST]);
    if (problem !== undefined) ask.wrong([problem]);
    const renamed = log && renamedGroup(stillThere(log), groups);
    const renaming = askRenamed(ask, renamed, words.answerRenamed);
    const isSame = renaming?.value === 'yes' ? renamed : undefined;
    const isNew = ({ name }: ReadGroup): boolean =>
      name !== isSame?.is && !log?.entries.some((entry) => nameKey(entry.group) === nameKey(name));
    const firsts = groups.filter(isNew).map((group) => herdRow(firstOf(group), 'from the list', units));
    const added = 'entry' in read ? [herdRow(read.entry, typed.note, units)] : [];
    const room = ask.room(log);
    const named = (row: HerdRow): HerdRow => {
      const [group, ...rest] = row;
      return isSame && nameKey(textOf(group)) === nameKey(isSame.was) ? [text(isSame.is), ...rest] : row;
    };
    const form = ask.form(
      () => ({ rows: [...(log?.rows ?? []).map(named), ...firsts, ...added], units, room }),
      {
        typed,
        problem,
        units,
        groups,
        wrong: wrong.groups.map(({ sentence }) => sentence),
        notes: notes.groups,
        renaming,
      },
      { sources: sources.groups ? { groups: sources.groups } : {} },
    );
    const { standing } = form;
    if (!standing || !isSame) return form;
    return { ...form, standing: { ...standing, block: renamedIn(standing.block, isSame) } };
  },
  compose: ({ rows, units, room }, corner) => herdBlock(rows, units, corner, room),
} satisfies Task<HerdPlan>;

/** Names of the log, without those of groups that have gone by it. */
function stillThere({ entries }: HerdRead): readonly string[] {
  const last = new Map(
    entries.flatMap(({ group, head }) => (head === undefined ? [] : [[nameKey(group), head]])),
  );
  return entries.flatMap(({ group }) => (last.get(nameKey(group)) === 0 ? [] : [group]));
}

/** The log that stands as if the grower had typed the new name: its rows are the same then. */
function renamedIn(block: BlockContent, { was, is }: RenamedGroup): BlockContent {
  const column = alignColumns(block).indexOf(0);
  const values = block.values.map((row) =>
    row.map((value, c) => (c === column && nameKey(String(value)) === nameKey(was) ? is : value)),
  );
  const { memory, ...named } = { ...block, values };
  return memory ? { ...named, memory: { ...memory, rows: matchRows({ ...named, memory }) } } : named;
}

/** A group as its list has it, on the day of its weighing. */
function firstOf({ name, head, weightKg, weighedOn }: ReadGroup): HerdEntry {
  return { group: name, day: weighedOn, head, weightKg };
}

/** The row that the form stands for; none where neither head nor weight was typed. */
function readChange(
  typed: Readonly<Record<keyof typeof CHANGE_LABELS, string>>,
  units: UnitSystem,
  comma: boolean,
): { readonly entry: HerdEntry } | { readonly problem: string } | { readonly none: true } {
  /** In inside units; NaN for what is typed and no amount. */
  const amountIn = (text: string, quantity?: 'mass'): number | undefined =>
    text.trim() === '' ? undefined : (textAmount({ quantity }, text, units, comma) ?? Number.NaN);
  const [head, weightKg] = [amountIn(typed.head), amountIn(typed.weight, 'mass')];
  if (head === undefined && weightKg === undefined) return { none: true };
  if (head !== undefined && !(Number.isInteger(head) && head >= 0 && head <= MOST_HEAD)) {
    return { problem: words.headMust(MOST_HEAD, typed.head) };
  }
  if (weightKg !== undefined && !(weightKg >= GROWING_LIGHTEST_KG && weightKg <= HEAVIEST_KG)) {
    const said = (kg: number): string => amountWords(kg, 'mass', units);
    return { problem: words.weightMust(said(GROWING_LIGHTEST_KG), said(HEAVIEST_KG), typed.weight) };
  }
  const day = dayFromIso(typed.day);
  if (day === undefined) return { problem: words.NEEDS_DAY };
  const amounts = { ...(head !== undefined && { head }), ...(weightKg !== undefined && { weightKg }) };
  return { entry: { group: typed.group, day, ...amounts } };
}
