import type { Book } from '../../block/book';
import { rememberedList } from '../../lists/list-memory';
import type { ListSources } from '../../lists/model';
import { nameKey } from '../../lists/read-list-cell';
import { toInside, type UnitSystem } from '../../units/units';
import { type Asking, asking, type ChoiceForm, type SettingsForm } from '../ask';
import type { GrowerLists } from '../grower-lists';
import { listedHerd } from '../listed-herd';
import { standingRotation } from '../rotation/rotation-standing';
import type { SettingSpec } from '../settings';
import type { Task } from '../task';
import { planNeeds } from './buy-list';
import { COMPARISON_SETTINGS } from './comparison-model';
import { type Cut, cutField } from './cut-field';
import { FENCE_WORDS } from './fence-types';
import { ITEM_NAMES, itemsOf } from './item-rows';
import { type LaidOut, laidPaddocks } from './laid-paddocks';
import type { LaidPaddock, Layout, ListLayout, Touching } from './layout';
import { GRID_SETTINGS, type GridKey } from './layout-rows';
import type { AtATime } from './material-needs';
import { MATERIALS_BLOCK, type MaterialsPlan, type MaterialsTyped, materialsBlock } from './materials-block';
import { MATERIALS_SETTINGS } from './materials-settings';
import { type MaterialsRead, NOTHING_TYPED, readMaterials } from './read-materials';
import { stockList, withEnoughJoules } from './stock-list';
import { stockAmounts, stockSettings, withAmounts } from './stock-settings';
import * as words from './words';

const LAYOUT_KINDS = {
  list: 'The paddocks of my list',
  grid: 'A block of equal paddocks, rows × columns',
  field: 'One field, cut into paddocks',
} as const;
export type LayoutKind = keyof typeof LAYOUT_KINDS;

const TOUCHING_OPTIONS: Readonly<Record<Touching, string>> = {
  lengths: 'Side by side along their lengths',
  widths: 'End to end along their widths',
  alone: 'Nowhere: each stands alone',
};
const CUTS: Readonly<Record<Cut, string>> = {
  strips: 'Strips as long as the field',
  'least fence': 'Rows and columns with the least fence',
};
const AT_A_TIME: Readonly<Record<AtATime['kind'], string>> = {
  all: 'All of them',
  set: 'A set that moves with the pigs',
};
const MOST_PADDOCKS = 500;

export type FieldKey = 'fieldWidth' | 'fieldLength' | 'fieldPaddocks';
const FIELD_SETTINGS: readonly SettingSpec<FieldKey>[] = [
  { key: 'fieldWidth', label: 'Width of the field', quantity: 'length', above: 0, note: '' },
  { key: 'fieldLength', label: 'Length of the field', quantity: 'length', above: 0, note: '' },
  {
    key: 'fieldPaddocks',
    label: 'Paddocks to cut it into',
    unit: 'paddocks',
    min: 1,
    max: MOST_PADDOCKS,
    whole: true,
    note: '',
  },
];
const SET_SETTINGS: readonly SettingSpec<'together'>[] = [
  {
    key: 'together',
    label: 'Paddocks that stand together',
    unit: 'paddocks',
    start: 2,
    min: 1,
    whole: true,
    note: words.NEXT_NOTE,
  },
];

/** What is to be fenced: a list, a block of rows and columns, or one field to be cut. Each asks for its own. */
export interface LayoutForm {
  readonly kind: ChoiceForm<LayoutKind>;
  readonly list?: {
    readonly lists: GrowerLists;
    readonly laidOut: LaidOut | undefined;
    readonly touching: ChoiceForm<Touching>;
  };
  readonly grid?: SettingsForm<GridKey>;
  readonly field?: { readonly settings: SettingsForm<FieldKey>; readonly cut: ChoiceForm<Cut> };
}

/** What of fence, posts, energizer and grounding it takes. */
export const MATERIALS_TASK = {
  name: MATERIALS_BLOCK,
  what: 'the materials list',
  tabName: 'Fence materials',
  next: words.VOLTS_NEXT,
  read: (book, answers) => {
    const ask = asking(book, answers, MATERIALS_BLOCK);
    const read = ask.block && readMaterials(ask.block);
    const units = ask.units();
    const herd = listedHerd(book, units);
    const inShed = stockList(book, units);
    const known = { ...(herd && { pigWeight: herd.lightest, groups: herd.groups }), ...inShed?.settings };
    const hasNets = inShed?.items.has(ITEM_NAMES.nets) ?? false;
    const kind = ask.choice(words.WHICH_FENCE, FENCE_WORDS, hasNets ? 'netting' : 'wire', read?.kind);
    const settings = ask.settings(MATERIALS_SETTINGS, read?.settings, units, known);
    const { form, layout, sources } = askLayout(book, ask, read, units, settings.values.shape || 1);
    const was = read?.atATime;
    const at = ask.choice(words.HOW_MANY, AT_A_TIME, 'set', was?.kind);
    const stood = was?.kind === 'set' ? { values: { together: was.paddocks } } : undefined;
    const together = at.value === 'set' ? ask.settings(SET_SETTINGS, stood, units) : undefined;
    const comparison = ask.settings(COMPARISON_SETTINGS, read?.comparison, units);
    ask.wrongInSheet(read?.problems ?? []);
    const atATime: AtATime = together
      ? { kind: 'set', paddocks: together.values.together ?? 1 }
      : { kind: 'all' };
    // What it takes is known once nothing is left to ask.
    const isAnswered = inShed && layout && ask.isAnswered();
    const stock = isAnswered
      ? withEnoughJoules(
          inShed,
          planNeeds({ units, layout, atATime, kind: kind.value, settings: settings.values }).needs.joules,
        )
      : inShed;
    const items = new Map([...(stock?.items ?? []), ...(read?.typed.items ?? [])]);
    const onHand = ask.settings(
      stockSettings(itemsOf(kind.value, items), units),
      { values: stockAmounts(items) },
      units,
    );
    return ask.form(
      () => ({
        layout: layout!,
        atATime,
        kind: kind.value,
        units,
        settings: settings.values,
        comparison: comparison.values,
        ...(sources.paddocks && { list: sources.paddocks }),
        typed: { ...(read?.typed ?? NOTHING_TYPED), items: withAmounts(items, onHand.values) },
      }),
      { units, kind, layout: form, at, together, settings, comparison, onHand, stock },
      { sources },
    );
  },
  compose: ({ typed, ...plan }, corner) => materialsBlock(plan, typed, corner),
} satisfies Task<MaterialsPlan & { readonly typed: MaterialsTyped }>;

interface Asked {
  readonly form: LayoutForm;
  /** Undefined while something is missing or wrong; the questions say what. */
  readonly layout: Layout | undefined;
  readonly sources: ListSources;
}

/** The paddocks of each group as it comes through them, where a rotation stands that names some. */
function inTurn(book: Book, paddocks: readonly LaidPaddock[]): Pick<ListLayout, 'inTurn'> {
  const places = new Map(paddocks.map(({ name }, at) => [nameKey(name), at]));
  const turns = new Map<string, number[]>();
  const moves = standingRotation(book)?.rotation.rows.filter(({ inDay }) => inDay !== undefined) ?? [];
  for (const { group, paddock } of [...moves].sort((a, b) => a.inDay! - b.inDay!)) {
    const at = places.get(nameKey(paddock));
    const turn = turns.get(nameKey(group)) ?? [];
    if (at !== undefined) turns.set(nameKey(group), [...turn, at]);
  }
  return turns.size === 0 ? {} : { inTurn: [...turns.values()] };
}

function askLayout(
  book: Book,
  ask: Asking,
  read: MaterialsRead | undefined,
  units: UnitSystem,
  shape: number,
): Asked {
  const length = (value: number | undefined): number => toInside(value ?? 0, 'length', units);
  // The list as this table was made from it, with sides that a rotation has no use for.
  const was = ask.block && rememberedList(ask.block, 'paddocks');
  const lists = ask.lists(['paddocks'], units, was && { paddocks: was });
  const hadGrid = read !== undefined && 'rows' in read.grid.values;
  const start = hadGrid || !lists.chosen.paddocks ? 'grid' : 'list';
  const kind = ask.choice(words.WHICH_GROUND, LAYOUT_KINDS, start);
  if (kind.value === 'grid') {
    const grid = ask.settings(GRID_SETTINGS, read?.grid, units);
    const { rows = 0, columns = 0, width, length: long } = grid.values;
    if (rows * columns > MOST_PADDOCKS) ask.wrong([words.tooMany(MOST_PADDOCKS)]);
    const sides = { widthMeters: length(width), lengthMeters: length(long) };
    return { form: { kind, grid }, layout: { kind: 'grid', rows, columns, ...sides }, sources: {} };
  }
  // The grid that the sheet had is given up; what is wrong in it still needs a look.
  ask.wrongInSheet(read?.grid.problems ?? []);
  if (kind.value === 'field') {
    const settings = ask.settings(FIELD_SETTINGS, undefined, units);
    const cut = ask.choice('How', CUTS, 'strips');
    const { fieldWidth, fieldLength, fieldPaddocks = 1 } = settings.values;
    const layout = settings.ok
      ? cutField(length(fieldWidth), length(fieldLength), fieldPaddocks, cut.value)
      : undefined;
    return { form: { kind, field: { settings, cut } }, layout, sources: {} };
  }
  const touching = ask.choice('Where paddocks touch', TOUCHING_OPTIONS, 'lengths', read?.touching);
  const source = lists.sources.paddocks;
  const on = { system: units, comma: ask.comma };
  const laidOut = source && laidPaddocks(source.tab, source.list, lists.paddocks, on, shape);
  const wrong = [...lists.wrong.paddocks, ...(laidOut?.problems ?? [])];
  ask.wrong(wrong.map(({ sentence }) => sentence));
  const paddocks = laidOut?.paddocks ?? [];
  if (paddocks.length === 0) ask.wrong([words.NO_LIST]);
  return {
    form: { kind, list: { lists, laidOut, touching } },
    layout: { kind: 'list', paddocks, touching: touching.value, ...inTurn(book, paddocks) },
    sources: source ? { paddocks: source } : {},
  };
}
