/** How a task asks: every field of its form, with what the sheet says and what was answered. */
import type { Book } from '../block/book';
import type { BlockContent } from '../block/read-block';
import { foundLists } from '../lists/found-lists';
import type { FoundList, ListKind } from '../lists/model';
import { startUnits } from '../lists/start-units';
import { decimalComma } from '../locale/decimal-comma';
import { readAmount } from '../locale/read-amount';
import type { UnitSystem } from '../units/units';
import { type GrowerLists, growerLists } from './grower-lists';
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

export const UNITS_LEGEND = 'Units';
export const UNITS_OPTIONS = {
  US: 'US (ft, ac, lb, gal, °F)',
  metric: 'Metric (m, ha, kg, L, °C)',
} as const;
export const LIST_LABELS: Readonly<Record<ListKind, string>> = {
  paddocks: 'Paddock list',
  groups: 'Group list',
};

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

export interface Asking {
  /** What stands in the block, for whoever reads what was typed there. */
  readonly block: BlockContent | undefined;
  readonly standing: Standing | undefined;
  readonly comma: boolean;
  /** Those of the block that stands, else as chosen. */
  readonly units: (start?: UnitSystem) => UnitSystem;
  /** Start values, over them what stands in the block, over them what was answered. */
  readonly settings: <Key extends string>(
    specs: readonly SettingSpec<Key>[],
    read: Partial<SettingsRead<Key>> | undefined,
    units: UnitSystem,
  ) => SettingsForm<Key>;
  /** `inSheet`: as the block says. */
  readonly choice: <Key extends string>(
    legend: string,
    options: Readonly<Record<Key, string>>,
    start: NoInfer<Key>,
    inSheet?: NoInfer<Key>,
  ) => ChoiceForm<Key>;
  readonly text: (label: string, start?: string) => string;
  /** Anything else that is answered. */
  readonly other: <Kind extends Answer>(label: string, inSheet?: unknown) => Kind | undefined;
  /** `kinds`: the lists that are asked for. */
  readonly lists: (
    kinds: readonly ListKind[],
    units: UnitSystem,
    remembered?: Parameters<typeof growerLists>[3],
  ) => GrowerLists;
  /** Sentences on what is missing or wrong. */
  readonly wrong: (sentences: readonly string[]) => void;
  /** The same, where a cell of the sheet is to blame. */
  readonly wrongInSheet: (sentences: readonly string[]) => void;
  readonly form: <Plan, View extends object>(
    plan: () => Plan,
    view: View,
    how?: { readonly sources?: Sources; readonly record?: string | undefined },
  ) => Form<Plan> & View;
}

/** `grows`: the block is typed into, and takes in the rows that were filled right below it. */
export function asking(book: Book, answers: Answers, name: string, grows = false): Asking {
  const standing = standingOf(book, name, grows);
  const block = standing?.reading;
  const comma = decimalComma(book.overview.locale);
  const questions: string[] = [];
  const sheetProblems: string[] = [];
  const labels: string[] = [];
  const inSheet: Record<string, unknown> = {};
  const taken: Record<string, Answer> = {};
  const onTab = (kind: ListKind, tab: string): FoundList => {
    const list = foundLists(book).find((one) => one.kind === kind && one.tab === tab);
    if (!list) throw new TypeError(`“${LIST_LABELS[kind]}” must be the tab of one, got “${tab}”`);
    return list;
  };
  const textAt = (label: string): string | undefined => {
    labels.push(label);
    const answer = answers[label];
    if (answer !== undefined && typeof answer !== 'string')
      throw new TypeError(`“${label}” must be answered with a text`);
    return answer;
  };
  const choice: Asking['choice'] = (legend, options, start, standingKey) => {
    const text = textAt(legend);
    const keys = Object.keys(options) as (typeof start)[];
    const chosen = text === undefined ? undefined : keys.find((key) => options[key] === text);
    if (text !== undefined && chosen === undefined)
      throw new TypeError(`“${legend}” must be one of ${Object.values(options).join(', ')}, got “${text}”`);
    const value = chosen ?? standingKey ?? start;
    inSheet[legend] = standingKey;
    taken[legend] = options[value];
    return { legend, options, value };
  };
  return {
    block,
    standing,
    comma,
    choice,
    units: (start) =>
      (block && readUnits(block)) ?? choice(UNITS_LEGEND, UNITS_OPTIONS, start ?? startUnits(book)).value,
    settings: (specs, read, units) => {
      for (const { key, label } of specs) inSheet[label] = read?.values?.[key];
      const typed = new Map(specs.map(({ key, label }) => [key, textAt(label)]));
      const standingValues = { ...startSettings(specs, units), ...read?.values };
      const { values, problems } = readSettingTexts(specs, typed, standingValues, units, comma);
      questions.push(...Object.values(problems as Record<string, string>));
      sheetProblems.push(...(read?.problems ?? []));
      const isTouched = ({ key }: { key: keyof typeof values }): boolean =>
        typed.get(key) !== undefined || standingValues[key] !== undefined;
      const shown = specs
        .filter(isTouched)
        .flatMap(({ key }) => (problems[key] ? [[key, problems[key]]] : []));
      const ok = Object.keys(problems).length === 0;
      return { specs, values, problems: Object.fromEntries(shown), ok, units, comma };
    },
    text: (label, start = '') => {
      const text = textAt(label) ?? start;
      taken[label] = text;
      return text;
    },
    other: <Kind extends Answer>(label: string, sheet?: unknown) => {
      labels.push(label);
      inSheet[label] = sheet;
      return answers[label] as Kind | undefined;
    },
    lists: (kinds, units, remembered) => {
      const labelled = kinds.map((kind) => [kind, LIST_LABELS[kind]] as const);
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
    wrong: (sentences) => {
      questions.push(...sentences);
    },
    wrongInSheet: (sentences) => {
      sheetProblems.push(...sentences);
    },
    form: (plan, view, { sources = {}, record } = {}) => {
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
  standing: SettingValues<Key>,
  units: UnitSystem,
  comma: boolean,
) {
  const problems: Partial<Record<Key, string>> = {};
  const values: Record<Key, number | undefined> = { ...standing };
  for (const { key, label, unit } of specs) {
    const text = typed.get(key);
    if (text === undefined) continue;
    const read = readAmount(text, comma, unit);
    if ('value' in read) values[key] = read.value;
    else problems[key] = read.problem.startsWith('be ') ? `${label} must ${read.problem}` : read.problem;
  }
  for (const { key, sentence } of settingProblems(specs, values, units)) problems[key] ??= sentence;
  return { values: values as SettingValues<Key>, problems };
}
