import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import { type Day, isoFromDay } from '../core/calendar/day';
import { MOST_GAIN_KG_PER_DAY } from '../tables/growing-weights';
import type { UnitSystem } from '../units/units';
import { amountWords } from './amount-words';
import { isBreedingName } from './breeding-name';
import { GROUP_WORDS, PADDOCK_WORDS } from './headings';
import { plainWords } from './match-heading';
import { GROUP_FIELDS, type GroupList, type ListProblem, type ReadGroup } from './model';
import {
  cellOf,
  contradict,
  type DateHabits,
  hasCell,
  isAmount,
  isDashed,
  isDay,
  MUST_BE_DATE,
  nameKey,
  nameOf,
  placeOf,
  type RowReader,
  readAmount,
  readDay,
  readName,
  refuse,
  remarkedDay,
  shownAt,
} from './read-list-cell';
import { type LeftOut, readRows } from './read-rows';
import { textDay } from './text-day';
import { typedTotalNotes } from './typed-total';
import * as words from './words';

export interface GroupsRead {
  readonly groups: readonly ReadGroup[];
  readonly problems: readonly ListProblem[];
  /** What the grower should know about the reading although nothing is wrong. */
  readonly notes: readonly string[];
  /** Totals rows that were passed over. */
  readonly leftOut: readonly LeftOut[];
  /** Cells that count as blank, because nothing could be read in them. */
  readonly unread: readonly ListProblem[];
  /** Groups that are left out until the grower says whether and where they are in the rotation. */
  readonly unplaced: readonly UnplacedGroup[];
}

/** A group of which the list says neither a paddock of the paddock list nor a day on which it goes into the rotation. */
export interface UnplacedGroup extends ListProblem {
  readonly row: number;
  readonly name: string;
}

/** Reads the grower's group list. All problems come at once, each with its cell; write nothing if there are any. */
export function readGroups(
  tab: TabContent,
  list: GroupList,
  system: UnitSystem,
  /** Whether the spreadsheet's locale writes a decimal comma. */
  comma: boolean,
  dates: DateHabits = {},
): GroupsRead {
  const unplaced: UnplacedGroup[] = [];
  const read = (reader: RowReader): ReadGroup | undefined => readGroup(reader, unplaced);
  const { items, readers, itemless: _, ...told } = readRows(tab, list, { system, comma, dates }, read);
  const heads = items.map(({ head }) => head);
  const running = runningAlong(items, readers);
  return {
    groups: items.filter((item) => !running.has(item)),
    ...told,
    unplaced,
    notes: [
      ...told.notes,
      ...told.unread
        .filter(({ cell }) => !unplaced.some((one) => one.cell === cell))
        .map(({ sentence }) => sentence),
      ...unplaced.map(({ sentence }) => sentence),
      ...typedTotalNotes(items, heads, readers),
      ...running.values(),
    ],
  };
}

/** Breeding stock in the paddock of other breeding stock, such as a boar with the sows, is planned with it: told. */
function runningAlong(groups: readonly ReadGroup[], readers: readonly RowReader[]): Map<ReadGroup, string> {
  const breeding = groups.flatMap((group, i) =>
    isBreeding(readers[i]!) ? [{ group, reader: readers[i]! }] : [],
  );
  const inOf = ({ standsIn }: ReadGroup): string | undefined => standsIn && nameKey(standsIn.paddock);
  return new Map(
    breeding.flatMap(({ group, reader }, b): [ReadGroup, string][] => {
      const place = inOf(group);
      const first = breeding.slice(0, b).find((other) => inOf(other.group) === place)?.group;
      if (!first || place === undefined) return [];
      const told = words.standsWith(nameCell(reader), nameOf(reader), first.name.trim());
      return [[group, told]];
    }),
  );
}

function readGroup(reader: RowReader, unplaced: UnplacedGroup[]): ReadGroup | undefined {
  const name = readName(reader);
  const isOfBreeding = isBreeding(reader);
  if (isOfBreeding) {
    const out = breedingLeftOut(reader);
    reader.notes.push(words.breedingStock(nameCell(reader), nameOf(reader), out ?? words.NO_GAIN));
    if (out) return undefined;
  }
  if (isDashed(reader, 'from')) return undefined;
  const from = readFrom(reader);
  const standsIn = readStanding(reader);
  const open = from === undefined && !standsIn ? openQuestion(reader) : undefined;
  if (open) {
    unplaced.push(open);
    return undefined;
  }
  const head = readAmount(reader, 'head', { min: 0, whole: true });
  if (head === 0) {
    reader.notes.push(words.noPigs(nameCell(reader), nameOf(reader)));
    return undefined;
  }
  const logged = loggedWeight(reader);
  if (!logged && isDashed(reader, 'weight')) return undefined;
  const { weightKg, weighedOn } = logged ?? readWeight(reader);
  const gainKg = readGain(reader);
  const dailyGainKg = gainKg ?? (isOfBreeding ? 0 : undefined);
  const { until, untilWeightKg } = readEnd(reader);
  if (from !== undefined && until !== undefined && until <= from) {
    contradict(reader, 'until', 'be after the day the group comes into the rotation');
  }
  if (name === undefined || head === undefined || weightKg === undefined || weighedOn === undefined) {
    return undefined;
  }
  return {
    name,
    head,
    weightKg,
    weighedOn,
    ...(dailyGainKg !== undefined && { dailyGainKg }),
    ...(from !== undefined && { from }),
    ...(until !== undefined && { until }),
    ...(untilWeightKg !== undefined && { untilWeightKg }),
    ...(standsIn && { standsIn }),
    cells: cellsOf(reader, logged !== undefined),
  };
}

/** The cell of each field that was read: not that of a weight which a log knows better. */
function cellsOf(reader: RowReader, isLogged: boolean): ReadGroup['cells'] {
  const isRemarked = !hasCell(reader, 'weighedOn') && remarkedDay(reader, 'weight') !== undefined;
  const own = GROUP_FIELDS.flatMap((field) => {
    const place = placeOf(reader, field === 'weighedOn' && isRemarked ? 'weight' : field);
    return place && !(isLogged && (field === 'weight' || field === 'weighedOn')) ? [[field, place]] : [];
  });
  return Object.fromEntries(own);
}

function nameCell(reader: RowReader): string {
  return cellOnTab(reader.tab.name, reader.row, placeOf(reader, 'name')!.column);
}

/** Why breeding stock has no place in the plan of the growing pigs; undefined: it has one. */
function breedingLeftOut(reader: RowReader): string | undefined {
  const { weighings } = reader.dates;
  if (!hasCell(reader, 'weight') && !weighings?.has(nameKey(nameOf(reader)))) return words.BREEDING_UNWEIGHED;
  if (!placeOf(reader, 'paddock')) return undefined;
  const isOut = hasCell(reader, 'paddock') && placeSaid(reader).place !== undefined;
  return isOut ? undefined : words.BREEDING_ELSEWHERE;
}

/** Whether a group is breeding stock by its name, or by a short word in a column that is read for nothing. */
function isBreeding({ tab, list, row }: RowReader): boolean {
  const other = Object.entries(list.columns).filter(([field]) => field !== 'name');
  const taken = new Set(other.map(([, column]) => column));
  const last = Math.max(...Object.values(list.columns).filter((column) => column !== undefined));
  const cells = (tab.values[row - 1] ?? []).slice(0, last);
  return cells.some((cell, c) => typeof cell === 'string' && !taken.has(c + 1) && isBreedingName(cell));
}

type Weight = Partial<Pick<ReadGroup, 'weightKg' | 'weighedOn'>>;

/** The last weighing in a log, where the list has none: "see the scale" is no weight, nor is one in an unknown unit. */
function loggedWeight(reader: RowReader): Weight | undefined {
  const key = nameKey(nameOf(reader));
  const logged = isAmount(reader, 'weight') ? undefined : reader.dates.weighings?.get(key);
  if (!logged) return undefined;
  const called = nameKey(logged.name) === key ? undefined : logged.name;
  reader.notes.push(words.weightFromLog(nameOf(reader), { ...logged, called }));
  return { weightKg: logged.weightKg, weighedOn: logged.day };
}

function readWeight(reader: RowReader): Weight {
  const weightKg = readAmount(reader, 'weight', { above: 0 });
  const weighedOn = readWeighedOn(reader);
  return { ...(weightKg !== undefined && { weightKg }), ...(weighedOn !== undefined && { weighedOn }) };
}

/** The day weighed; today, and told, where the list says none or it cannot be read. */
function readWeighedOn(reader: RowReader): Day | undefined {
  const { today } = reader.dates;
  const remarked = hasCell(reader, 'weighedOn') ? undefined : remarkedDay(reader, 'weight');
  if (remarked !== undefined) {
    reader.readings.push(`${shownAt(reader, 'weight')} as of ${isoFromDay(remarked)}`);
    return remarked;
  }
  const typed = hasCell(reader, 'weighedOn') ? readDay(reader, 'weighedOn') : undefined;
  if (typed !== undefined) return typed;
  if (today === undefined) return contradict(reader, 'weighedOn', MUST_BE_DATE);
  reader.notes.push(words.weighedToday(nameCell(reader), nameOf(reader)));
  return today;
}

/** The day on which it goes into the rotation. What a formula says there, such as "not ready" of the training log, is waited for. */
function readFrom(reader: RowReader): Day | undefined {
  const place = placeOf(reader, 'from');
  if (!place || !hasCell(reader, 'from')) return undefined;
  const isTyped = (reader.tab.formulas[place.row - 1]?.[place.column - 1] ?? '') === '';
  return isTyped || isDay(reader, 'from')
    ? readDay(reader, 'from')
    : contradict(reader, 'from', MUST_BE_DATE);
}

/** What is to be asked where words say something of the place or the day, and neither is known. */
function openQuestion(reader: RowReader): UnplacedGroup | undefined {
  const field = (['paddock', 'from'] as const).find((one) => hasCell(reader, one));
  if (!field) return undefined;
  const { row, column } = placeOf(reader, field)!;
  const cell = cellOnTab(reader.tab.name, row, column);
  const [name, said] = [nameOf(reader), String(cellOf(reader, field)).trim()];
  const sentence = field === 'paddock' ? words.noPaddock(cell, name, said) : words.noStart(cell, name, said);
  return { row, name, cell, sentence };
}

/** Where the group stands now; undefined where nothing is said, or no paddock of the list. A day without a place says nothing. */
function readStanding(reader: RowReader): ReadGroup['standsIn'] {
  const said = hasCell(reader, 'paddock') ? placeSaid(reader) : undefined;
  if (said?.place === undefined) return undefined;
  const { place: paddock, since: behind } = said;
  // Of a day that cannot be read nothing is known but that they are there now.
  const typed = hasCell(reader, 'since') ? readDay(reader, 'since') : undefined;
  const since = typed ?? behind ?? reader.dates.today;
  if (paddock !== String(cellOf(reader, 'paddock')).trim()) {
    const on = behind === undefined ? '' : ` since ${isoFromDay(behind)}`;
    reader.readings.push(`${shownAt(reader, 'paddock')} as ${paddock}${on}`);
  }
  return since === undefined ? { paddock } : { paddock, since };
}

/** "Lot 3 since 12 Oct" is paddock 3 and a day, where no paddock has the whole for a name; `place` undefined: no paddock. */
function placeSaid(reader: RowReader): { readonly place: string | undefined; readonly since?: Day } {
  const { paddockNamed = (name: string) => name, order, today } = reader.dates;
  const text = String(cellOf(reader, 'paddock')).trim();
  const whole = paddockNamed(text);
  if (whole !== undefined) return { place: whole };
  const words = text.split(/\s+/);
  const at = words.findIndex((word, w) => w > 0 && GROUP_WORDS.since.includes(plainWords(word)));
  const day = at < 0 ? undefined : textDay(words.slice(at + 1).join(' '), order, today);
  const since = day && 'first' in day ? day.first : undefined;
  const place = since === undefined ? words : words.slice(0, at);
  const named = PADDOCK_WORDS.name.includes(plainWords(place[0]!)) ? place.slice(1) : place;
  const name = [place, named].map((one) => paddockNamed(one.join(' '))).find((one) => one !== undefined);
  return name === undefined || since === undefined ? { place: name } : { place: name, since };
}

/** "Until" holds a date or a weight; a column of its own may hold the weight. */
function readEnd(reader: RowReader): { until: Day | undefined; untilWeightKg: number | undefined } {
  const given = hasCell(reader, 'until');
  const until = given && isDay(reader, 'until') ? readDay(reader, 'until') : undefined;
  const ownWeight = hasCell(reader, 'untilWeight')
    ? readAmount(reader, 'untilWeight', { above: 0 })
    : undefined;
  if (!given || until !== undefined || isDay(reader, 'until')) return { until, untilWeightKg: ownWeight };
  if (!isAmount(reader, 'until')) return { until: readDay(reader, 'until'), untilWeightKg: ownWeight };
  return { until, untilWeightKg: ownWeight ?? readAmount(reader, 'until', { above: 0 }) };
}

function readGain(reader: RowReader): number | undefined {
  if (!hasCell(reader, 'dailyGain')) return undefined;
  const gainKg = readAmount(reader, 'dailyGain', { min: 0 });
  if (gainKg === undefined || gainKg <= MOST_GAIN_KG_PER_DAY) return gainKg;
  const said = (kg: number): string => amountWords(kg, 'massPerDay', reader.system);
  return refuse(reader, 'dailyGain', `be at most ${said(MOST_GAIN_KG_PER_DAY)}`, said(gainKg));
}
