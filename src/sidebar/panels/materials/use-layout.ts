import { useState } from 'preact/hooks';
import type { FoundList, ListSource, PaddockList } from '../../../../shared/lists/model';
import { type Cut, cutField } from '../../../../shared/tasks/materials/cut-field';
import { type LaidOut, laidPaddocks } from '../../../../shared/tasks/materials/laid-paddocks';
import type { Layout, Touching } from '../../../../shared/tasks/materials/layout';
import { GRID_SETTINGS, type GridKey } from '../../../../shared/tasks/materials/layout-rows';
import type { MaterialsRead } from '../../../../shared/tasks/materials/read-materials';
import type { SettingSpec } from '../../../../shared/tasks/settings';
import { toInside, type UnitSystem } from '../../../../shared/units/units';
import { type Lists, useLists } from '../../lists/use-lists';
import { type SettingsState, useSettings } from '../../parts/settings-state';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';

export type LayoutKind = 'list' | 'grid' | 'field';
export type FieldKey = 'fieldWidth' | 'fieldLength' | 'fieldPaddocks';

const MOST_PADDOCKS = 500;

export const FIELD_SETTINGS: readonly SettingSpec<FieldKey>[] = [
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

export interface LayoutState {
  readonly kind: LayoutKind;
  readonly setKind: (kind: LayoutKind) => void;
  readonly lists: Lists;
  readonly touching: Touching;
  readonly setTouching: (touching: Touching) => void;
  readonly cut: Cut;
  readonly setCut: (cut: Cut) => void;
  readonly grid: SettingsState<GridKey>;
  readonly field: SettingsState<FieldKey>;
  readonly laidOut: LaidOut | undefined;
  readonly source: ListSource<PaddockList> | undefined;
  /** Undefined while something is missing or wrong. */
  readonly layout: Layout | undefined;
}

interface Options {
  readonly units: UnitSystem;
  readonly comma: boolean;
  readonly shape: number;
  readonly standing: MaterialsRead | undefined;
}

/** What is to be fenced: a list, a block of rows and columns, or one field to be cut. */
export function useLayout(book: Book, { units, comma, shape, standing }: Options): LayoutState {
  const lists = useLists(book, units, standing?.list ? { paddocks: standing.list } : {});
  const list = lists.chosen.paddocks;
  const hadGrid = standing !== undefined && 'rows' in standing.grid.values;
  const [kind, setKind] = useState<LayoutKind>(hadGrid || !list ? 'grid' : 'list');
  const [touching, setTouching] = useState<Touching>(standing?.touching ?? 'lengths');
  useReset(standing?.touching, () => standing?.touching && setTouching(standing.touching));
  const [cut, setCut] = useState<Cut>('strips');
  const grid = useSettings(GRID_SETTINGS, standing?.grid.values ?? {}, { units, comma });
  const field = useSettings(FIELD_SETTINGS, {}, { units, comma });
  const tab = book.tabs.find(({ name }) => name === list?.tab);
  const source = tab && list ? { tab, list: asPaddocks(list) } : undefined;
  const laidOut =
    source && laidPaddocks(source.tab, source.list, lists.paddocks, { system: units, comma }, shape);
  const layout = layoutOf(kind, { grid, field, cut, touching, laidOut, lists, units });
  return { kind, setKind, lists, touching, setTouching, cut, setCut, grid, field, laidOut, source, layout };
}

function asPaddocks(list: FoundList): PaddockList {
  return list as unknown as PaddockList;
}

interface Parts {
  readonly grid: SettingsState<GridKey>;
  readonly field: SettingsState<FieldKey>;
  readonly cut: Cut;
  readonly touching: Touching;
  readonly laidOut: LaidOut | undefined;
  readonly lists: Lists;
  readonly units: UnitSystem;
}

function layoutOf(kind: LayoutKind, parts: Parts): Layout | undefined {
  const { grid, field, cut, touching, laidOut, lists, units } = parts;
  const length = (value: number | undefined): number => toInside(value ?? 0, 'length', units);
  if (kind === 'list') {
    const wrong =
      lists.problems.some(({ cell }) => ofTab(cell, lists)) || (laidOut?.problems.length ?? 0) > 0;
    if (!laidOut || wrong || laidOut.paddocks.length === 0) return undefined;
    return { kind: 'list', paddocks: laidOut.paddocks, touching };
  }
  if (kind === 'grid') {
    const { rows = 0, columns = 0, width, length: long } = grid.read.values;
    if (!grid.read.ok || rows * columns > MOST_PADDOCKS) return undefined;
    return { kind: 'grid', rows, columns, widthMeters: length(width), lengthMeters: length(long) };
  }
  if (!field.read.ok) return undefined;
  const { fieldWidth, fieldLength, fieldPaddocks = 1 } = field.read.values;
  return cutField(length(fieldWidth), length(fieldLength), fieldPaddocks, cut);
}

/** Whether a problem stands in the paddock list: trouble in the group list does not matter here. */
function ofTab(cell: string, lists: Lists): boolean {
  const { paddocks, groups } = lists.chosen;
  if (!paddocks) return false;
  return groups?.tab === paddocks.tab || !groups || cell.replace(/^'|'/g, '').startsWith(paddocks.tab);
}
