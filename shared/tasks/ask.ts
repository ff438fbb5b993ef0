/** How a task asks: every field of its form, with what the sheet says and what was answered. */
import type { Book } from '../block/book';
import { foundLists } from '../lists/found-lists';
import { MEMORY_LABELS } from '../lists/list-memory';
import type { FoundList, ListKind } from '../lists/model';
import { startUnits } from '../lists/start-units';
import { decimalComma } from '../locale/decimal-comma';
import { readAmount } from '../locale/read-amount';
import type { UnitSystem } from '../units/units';
import { type GrowerLists, growerLists } from './grower-lists';
import { NEW_TABLE, type TableRoom } from './room-to-type';
import {
  readUnits,
  type SettingSpec,
  type SettingsRead,
  type SettingValues,
  settingProblems,
  startSettings,
} from './settings';
import { type Standing, standingOf } from './standing';
import type { Answer, Answers, Form, Sources } from './task';
import * as words from './words';

export const UNITS_LEGEND = 'Units';
export const UNITS_OPTIONS = {
  US: 'US (ft, ac, lb, gal, °F)',
  metric: 'Metric (m, ha, kg, L, °C)',
} as const;

/** Numbers of a task as fields. */
export interface SettingsForm<Key extends string = string> {
  readonly specs: readonly SettingSpec<Key>[];
  /** In cell units. */
  readonly values: SettingValues<Key>;
  /** A field that nobody has come to yet is not called wrong; what is missing there still holds the task back. */
  readonly problems: Readonly<Partial<Record<Key, string>>>;
  readonly ok: boolean;
  readonly units: UnitSystem;
  readonly comma: boolean;
}

/** One of a few. */
export interface ChoiceForm<Key extends string = string> {
  readonly legend: string;
  readonly options: Readonly<Record<Key, string>>;
  readonly value: Key;
}

export type Asking = ReturnType<typeof asking>;

/** `grows`: as `standingOf` takes it. `standing`: where the task knows more of its block. */
export function asking(
  book: Book,
  answers: Answers,
  name: string,
  grows?: 'down',
  standing: Standing | undefined = standingOf(book, name, grows),
) {
  const block = standing?.reading;
  const comma = decimalComma(book.overview.locale);
  const questions: string[] = [];
  const sheetProblems: string[] = [];
  const labels: string[] = [];
  const inSheet: Record<string, unknown> = {};
  const taken: Record<string, Answer> = {};
  const onTab = (kind: ListKind, tab: string): FoundList => {
    const list = foundLists(book).find((one) => one.kind === kind && one.tab === tab);
    if (!list) throw new TypeError(words.oneOf(MEMORY_LABELS[kind], tab));
    return list;
  };
  const textAt = (label: string): string | undefined => {
    labels.push(label);
    const answer = answers[label];
    if (answer !== undefined && typeof answer !== 'string') throw new TypeError(words.answerWithText(label));
    return answer;
  };
  /** `inTable`: as the block says. */
  const choice = <Key extends string>(
    legend: string,
    options: Readonly<Record<Key, string>>,
    start: NoInfer<Key>,
    inTable?: NoInfer<Key>,
  ): ChoiceForm<Key> => {
    const text = textAt(legend);
    const keys = Object.keys(options) as Key[];
    const chosen = text === undefined ? undefined : keys.find((key) => options[key] === text);
    if (text !== undefined && chosen === undefined)
      throw new TypeError(words.oneOfThese(legend, Object.values(options).join(', '), text));
    const value = chosen ?? inTable ?? start;
    inSheet[legend] = inTable;
    taken[legend] = options[value];
    return { legend, options, value };
  };
  const text = (label: string, start = ''): string => {
    const typed = textAt(label) ?? start;
    taken[label] = typed;
    return typed;
  };
  return {
    /** What stands in the block, for whoever reads what was typed there. */
    block,
    standing,
    comma,
    choice,
    /** Those of the block that stands, else as chosen. */
    units: (start?: UnitSystem): UnitSystem =>
      (block && readUnits(block)) ?? choice(UNITS_LEGEND, UNITS_OPTIONS, start ?? startUnits(book)).value,
    /** Start values (`known`: those that the sheet knows), over them what stands in the block, over them the answers. */
    settings: <Key extends string>(
      specs: readonly SettingSpec<Key>[],
      read: Partial<SettingsRead<Key>> | undefined,
      units: UnitSystem,
      known: Partial<SettingValues<Key>> = {},
    ): SettingsForm<Key> => {
      for (const { key, label } of specs) inSheet[label] = read?.values?.[key];
      const typed = new Map(specs.map(({ key, label }) => [key, textAt(label)]));
      const given = { ...known, ...read?.values };
      const answered = readSettingTexts(specs, typed, given, units, comma).values;
      const standingValues = startSettings(specs, units, answered);
      const { values, problems } = readSettingTexts(specs, typed, standingValues, units, comma);
      questions.push(...Object.values(problems as Record<string, string>));
      sheetProblems.push(...(read?.problems ?? []));
      const shown = specs.flatMap(({ key }) =>
        problems[key] && (typed.get(key) !== undefined || standingValues[key] !== undefined)
          ? [[key, problems[key]]]
          : [],
      );
      const ok = Object.keys(problems).length === 0;
      return { specs, values, problems: Object.fromEntries(shown), ok, units, comma };
    },
    /** For a table that is typed into: the lines that it has now, and those free below it. `read`: as it stands. */
    room: (read: { readonly lines: number } | undefined): TableRoom =>
      read ? { lines: read.lines, below: standing?.below ?? 0 } : NEW_TABLE,
    /** Several at once, by their labels. */
    texts: <Key extends string>(
      fields: Readonly<Record<Key, string>>,
      start: Partial<Record<Key, string>>,
    ): Readonly<Record<Key, string>> =>
      Object.fromEntries(
        Object.entries<string>(fields).map(([key, label]) => [key, text(label, start[key as Key])]),
      ) as Record<Key, string>,
    /** Anything else that is answered. */
    other: <Kind extends Answer>(label: string, sheet?: unknown): Kind | undefined => {
      labels.push(label);
      inSheet[label] = sheet;
      return answers[label] as Kind | undefined;
    },
    lists: (
      kinds: readonly ListKind[],
      units: UnitSystem,
      remembered?: Parameters<typeof growerLists>[3],
    ): GrowerLists => {
      const labelled = kinds.map((kind) => [kind, MEMORY_LABELS[kind]] as const);
      labels.push(...labelled.map(([, label]) => label));
      const own = Object.fromEntries(
        labelled.flatMap(([kind, label]) => {
          const answer = answers[label] as FoundList | string | undefined;
          return answer === undefined
            ? []
            : [[kind, typeof answer === 'string' ? onTab(kind, answer) : answer]];
        }),
      );
      const lists = growerLists(book, units, own, remembered);
      for (const [kind, label] of labelled) {
        const chosen = lists.chosen[kind];
        if (chosen) taken[label] = chosen;
      }
      return lists;
    },
    /** Nothing is missing or wrong so far. */
    isAnswered: (): boolean => questions.length + sheetProblems.length === 0,
    /** Sentences on what is missing or wrong. */
    wrong: (sentences: readonly string[]): void => {
      questions.push(...sentences);
    },
    /** The same, where a cell of the sheet is to blame. */
    wrongInSheet: (sentences: readonly string[]): void => {
      sheetProblems.push(...sentences);
    },
    form: <Plan, View extends object>(
      plan: () => Plan,
      view: View,
      { sources = {}, record }: { sources?: Sources; record?: string | undefined } = {},
    ): Form<Plan> & View => {
      const all = [...questions, ...sheetProblems];
      return {
        ...view,
        plan: all.length === 0 ? plan() : undefined,
        questions: all,
        sheetProblems,
        standing: record === undefined ? standing : undefined,
        record,
        inSheet,
        taken,
        labels,
        sources,
      };
    },
  };
}

/** What was typed wins over the values that stand (start values or those read from the block). */
function readSettingTexts<Key extends string>(
  specs: readonly SettingSpec<Key>[],
  typed: ReadonlyMap<Key, string | undefined>,
  standing: Partial<SettingValues<Key>>,
  units: UnitSystem,
  comma: boolean,
) {
  const problems: Partial<Record<Key, string>> = {};
  const values: Partial<Record<Key, number | undefined>> = { ...standing };
  for (const { key, label, unit } of specs) {
    const text = typed.get(key);
    if (text === undefined) continue;
    const read = readAmount(text, comma, unit);
    if ('value' in read) values[key] = read.value;
    else problems[key] = read.problem.startsWith('be ') ? `${label} must ${read.problem}` : read.problem;
  }
  for (const { key, sentence } of settingProblems(specs, values as SettingValues<Key>, units))
    problems[key] ??= sentence;
  return { values: values as SettingValues<Key>, problems };
}
