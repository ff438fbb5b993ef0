/** What stands in the file when something is recorded: the rotation table, the lists, and a card for each group. */
import type { Book } from '../../block/book';
import { type Day, dayFromIso } from '../../core/calendar/day';
import { nameKey } from '../../lists/read-list-cell';
import { herdOn } from '../../plan/herd-on';
import type { OldRow, RotationSettings } from '../../table/model';
import { type GrowerLists, growerLists } from '../grower-lists';
import { type StandingRotation, standingRotation } from '../rotation/rotation-standing';
import { trainingWords } from '../training/group-training';
import { NO_TABLE } from '../words';

export interface FarmNow {
  readonly book: Book;
  readonly today: Day;
  readonly old: StandingRotation;
  readonly settings: RotationSettings;
  readonly lists: GrowerLists;
  readonly cards: readonly Card[];
}

/** A group with its moves, in the order of days; those that were skipped are left out. */
export interface Card {
  readonly group: string;
  readonly moves: readonly OldRow[];
  /** The move that led to where it stands; absent: it has not come in yet. */
  readonly at: OldRow | undefined;
  /** A day is typed for that move; else it counts as done as planned. */
  readonly isRecorded: boolean;
  /** Its last stay is over. */
  readonly hasLeft: boolean;
  /** Moves that nobody has recorded: those that were due, and the first that is to come. */
  readonly open: readonly OldRow[];
  /** The first of the open ones, as today's page has it; where nothing was ever recorded, the last that was due. */
  readonly next: OldRow | undefined;
  readonly head: number | undefined;
  /** What the training log says of a group that is not ready. */
  readonly training: string | undefined;
}

/** Says what is missing where nothing can be recorded yet. */
export function farmNow(book: Book): FarmNow | { readonly missing: readonly string[] } {
  const old = standingRotation(book);
  const settings = old?.rotation.settings;
  if (!old || !settings) {
    return { missing: [NO_TABLE] };
  }
  const lists = growerLists(book, settings.unitSystem, {}, settings.lists);
  const problems = [...old.rotation.problems, ...lists.problems].map(({ sentence }) => sentence);
  if (problems.length > 0) return { missing: problems };
  const today = dayFromIso(book.overview.today) ?? 0;
  return { book, today, old, settings, lists, cards: cardsOf(book, old.rotation.rows, lists, today) };
}

function cardsOf(book: Book, rows: readonly OldRow[], { groups }: GrowerLists, today: Day): Card[] {
  const training = trainingWords(book);
  const names = new Map(
    [...groups.map(({ name }) => name), ...rows.map(({ group }) => group)].map((name) => [
      nameKey(name),
      name,
    ]),
  );
  return [...names.entries()].map(([key, group]) => {
    const own = rows.filter((row) => nameKey(row.group) === key && row.inDay !== undefined);
    const moves = own.sort((a, b) => a.inDay! - b.inDay! || a.sheetRow - b.sheetRow);
    const listed = groups.find(({ name }) => nameKey(name) === key);
    const head = listed && herdOn(listed, today).head;
    // Where none are left, no move is to be made.
    const none = head === 0 && { open: [], next: undefined };
    return { group, ...placeOf(moves, today), ...none, head, training: training(group) };
  });
}

function placeOf(moves: readonly OldRow[], today: Day): Omit<Card, 'group' | 'head' | 'training'> {
  const isPast = ({ inDay }: OldRow): boolean => inDay! <= today;
  const recorded = moves.map((row) => isPast(row) && row.movedIn !== undefined).lastIndexOf(true);
  const planned = moves.map(isPast).lastIndexOf(true);
  const isRecorded = recorded >= 0;
  const place = isRecorded ? recorded : planned;
  const at = moves[place];
  const open = moves.slice(recorded + 1).filter((_, i, all) => i === 0 || isPast(all[i - 1]!));
  const next = isRecorded ? open[0] : (open.filter(isPast).pop() ?? open[0]);
  const hasLeft = at !== undefined && place === moves.length - 1 && (at.out ?? today + 1) <= today;
  return { moves, at, isRecorded, hasLeft, open, next };
}
