/**
 * Farm books of strangers: planned as they stand, and nothing in them read otherwise than it is meant without a word.
 *
 * Two times ten. The second ten were made by somebody who had never seen the code: at first none of them was planned as it
 * stood, now all ten are. They have been looked at since, so that they say nothing any more of books yet to come.
 * Of ten more, none was read as it is meant at first; five are now, the winter books. The other five are not here.
 */
import { describe, expect, test } from 'vitest';
import { isoFromDay } from '../../shared/core/calendar/day';
import { unusedHeadings, withColumn } from '../../shared/lists/list-columns';
import type { FoundList } from '../../shared/lists/model';
import { ROTATION_TASK } from '../../shared/tasks/rotation/rotation-task';
import type { Answers } from '../../shared/tasks/task';
import { openWorkbook } from '../../src/headless';
import { readBook } from '../hard-use/rotation-task';
import { soonPlanned } from '../soon-planned';
import { scriptText } from '../tasks/script-text';
import { FRESH_BOOKS } from './books/fresh-books';
import { type BookTruth, startTabs, TEN_BOOKS, type WrittenBook } from './books/ten-books';
import { WINTER_BOOKS } from './books/winter-books';

const iso = (day: number | undefined): string | undefined =>
  day === undefined ? undefined : isoFromDay(day);

async function open(written: WrittenBook) {
  const { locale, today } = written;
  const codeJs = await scriptText();
  return readBook(await openWorkbook({ tabs: startTabs(written), locale, today, codeJs }));
}

/** What the grower has to say first: one press on one of two buttons. */
const ASKED: Readonly<Record<string, { readonly question: RegExp; readonly answer: Press }>> = {
  'es-dehesa': { question: /which is the weight, “Peso actual \(kg\)”/, answer: ['groups', 'weight', 4] },
};
type Press = readonly [kind: 'groups', field: 'weight', column: number];

/** What is not read as it is meant, with the words that say so. */
const TOLD: Readonly<Record<string, Readonly<Record<string, RegExp>>>> = {
  // Of two seasons the later is read.
  'pt-parques': { 'Ribeira last used undefined': /^Columns not used: .*Saída \(Época 2025\)/ },
  // A script does not see that the row is hidden.
  'se-hagar': {
    'paddock Gamla dammen 3500': /“utarrenderad t.o.m. 2027”: “Gamla dammen” is read like the others/,
  },
  'us-pens': {
    'Hazelnuts open until undefined': /OUT by 8\/20 for harvest”: is “Hazelnuts” open until 2026-08-20/,
  },
  'no-beiter': { 'paddock (utleid) Myra 9000': /“\(utleid\) Myra” stands below the total/ },
};

const BOOKS = [...TEN_BOOKS, ...FRESH_BOOKS, ...WINTER_BOOKS];

describe.each(BOOKS.map((book) => [book.name, book] as const))('%s', (name, written) => {
  test('is planned without a cell retyped', async () => {
    const book = await open(written);
    const asked = ASKED[name];
    const form = ROTATION_TASK.read(book, {});
    const questions = form.lists.problems.map(({ sentence }) => sentence);
    expect(questions).toEqual(asked ? [expect.stringMatching(asked.question)] : []);
    const { season, lists } = asked
      ? ROTATION_TASK.read(book, answered(form.lists.chosen.groups!, asked.answer))
      : form;
    expect(lists.problems).toEqual([]);
    if ('missing' in season) throw new Error(season.missing);
    expect(soonPlanned(season.problem)).toHaveProperty('stays');
  }, 60_000);

  test('every paddock and group is read as it is meant, or told', async () => {
    const book = await open(written);
    const first = ROTATION_TASK.read(book, {}).lists;
    const asked = ASKED[name];
    const { lists } = asked
      ? ROTATION_TASK.read(book, answered(first.chosen.groups!, asked.answer))
      : { lists: first };
    const { truth, today } = written;
    const unused = [lists.chosen.paddocks!, lists.chosen.groups!].map(
      (list) => `Columns not used: ${unusedHeadings(list).join(', ')}`,
    );
    const notes = [...lists.notes.paddocks, ...lists.notes.groups, ...unused];
    const told = TOLD[name] ?? {};
    const was = facts(lists, today);
    const meant = factsOf(truth, today);
    const wrong = was.filter((fact) => !meant.includes(fact));
    expect(wrong).toEqual(Object.keys(told));
    for (const words of Object.values(told)) expect(notes).toContainEqual(expect.stringMatching(words));
    for (const [paddock, day] of Object.entries(truth.openFromOffered ?? {}))
      expect(notes).toContainEqual(expect.stringMatching(`is “${paddock}” open from ${day}`));
    for (const group of truth.breeding ?? [])
      expect(notes).toContainEqual(
        expect.stringMatching(`${escaped(group)}” is read as breeding stock.*left out`),
      );
  });
});

function answered(list: FoundList, [, field, column]: Press): Answers {
  return { 'Group list': withColumn(list, field, column) };
}

const escaped = (text: string): string => text.replace(/[()+]/g, '\\$&');

function facts(
  { paddocks, groups }: ReturnType<typeof ROTATION_TASK.read>['lists'],
  today: string,
): string[] {
  return [
    ...paddocks.flatMap(({ name, areaSquareMeters, lastUsed, openFrom, openUntil, shutFrom, shutUntil }) => [
      `paddock ${name} ${Math.round(areaSquareMeters)}`,
      `${name} last used ${iso(lastUsed)}`,
      `${name} open from ${iso(openFrom)}`,
      `${name} open until ${iso(openUntil)}`,
      `${name} shut ${iso(shutFrom)} ${iso(shutUntil)}`,
    ]),
    ...groups.flatMap(({ name, head, weightKg, weighedOn, dailyGainKg, from, until, standsIn }) => [
      `group ${name} ${head} ${weightKg.toFixed(1)}`,
      `${name} weighed ${iso(weighedOn)}`,
      `${name} gains ${dailyGainKg?.toFixed(2)}`,
      `${name} from ${iso(from)}`,
      `${name} until ${iso(until)}`,
      `${name} in ${standsIn?.paddock} since ${standsIn ? iso(standsIn.since) : today}`,
    ]),
  ];
}

/** The same facts as a person reads them; what no day is written for is as of today, which the page says. */
function factsOf(truth: BookTruth, today: string): string[] {
  return [
    ...truth.paddocks.flatMap(([name, hectares]) => [
      `paddock ${name} ${Math.round(hectares * 10_000)}`,
      `${name} last used ${truth.lastUsed[name]}`,
      `${name} open from ${truth.openFrom?.[name]}`,
      `${name} open until ${truth.openUntil?.[name]}`,
      `${name} shut ${truth.closed?.[name]?.[0]} ${truth.closed?.[name]?.[1]}`,
    ]),
    ...(truth.shownAtLeast ?? []).flatMap((name) =>
      ['last used undefined', 'open from undefined', 'open until undefined', 'shut undefined undefined'].map(
        (what) => `${name} ${what}`,
      ),
    ),
    ...truth.groups.flatMap(([name, head, kg]) => [
      `group ${name} ${head} ${kg.toFixed(1)}`,
      `${name} weighed ${truth.weighed?.[name] ?? today}`,
      `${name} gains ${truth.gains?.[name]?.toFixed(2)}`,
      `${name} from ${truth.from?.[name]}`,
      `${name} until ${truth.until[name]}`,
      `${name} in ${truth.at[name]?.[0]} since ${truth.at[name]?.[1] ?? today}`,
    ]),
  ];
}

test('nothing that is meant is missing', async () => {
  const whole = await Promise.all(
    BOOKS.map(async (written) => {
      const { lists } = ROTATION_TASK.read(await open(written), {});
      return [lists.paddocks.length, lists.groups.length];
    }),
  );
  expect(whole).toEqual(
    BOOKS.map(({ truth }) => [
      truth.paddocks.length + (truth.shownAtLeast?.length ?? 0),
      truth.groups.length,
    ]),
  );
}, 60_000);
