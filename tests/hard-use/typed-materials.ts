/** The materials list of a paddock list and of a block of equal paddocks, rebuilt as its panel does. */
import type { BlockContent } from '../../shared/block/read-block';
import type { PaddockList } from '../../shared/lists/model';
import { startUnits } from '../../shared/lists/start-units';
import { COMPARISON_SETTINGS } from '../../shared/tasks/materials/comparison-model';
import { laidPaddocks } from '../../shared/tasks/materials/laid-paddocks';
import type { Layout } from '../../shared/tasks/materials/layout';
import { GRID_SETTINGS } from '../../shared/tasks/materials/layout-rows';
import { MATERIALS_BLOCK, materialsBlock } from '../../shared/tasks/materials/materials-block';
import { MATERIALS_SETTINGS } from '../../shared/tasks/materials/materials-settings';
import {
  type MaterialsRead,
  NOTHING_TYPED,
  readMaterials,
} from '../../shared/tasks/materials/read-materials';
import { readUnits, startSettings } from '../../shared/tasks/settings';
import { toInside, type UnitSystem } from '../../shared/units/units';
import type { Book } from '../../src/sidebar/parts/use-book';
import { growersOwn } from './list-source';
import { readLists } from './rotation-task';
import { composed, type Rebuilt, type TypedTask } from './typed-cells';
import { contentOf, over, reading } from './typed-over';
import { settingsOnPage, withOwnInputs, withOwnSettings } from './typed-settings';

export const GRID_MATERIALS = 'SOUNDER_GRID_MATERIALS';

export function materialsTask(book: Book): TypedTask {
  return taskOf('Materials', book, contentOf(book, MATERIALS_BLOCK));
}

export function gridMaterialsTask(book: Book): TypedTask {
  return taskOf('Materials of equal paddocks', book, contentOf(book, GRID_MATERIALS));
}

/** A list of equal paddocks as it is written first, two of them fenced at a time. */
export function gridMaterials(units: UnitSystem) {
  const plan = {
    layout: { kind: 'grid', rows: 3, columns: 5, widthMeters: 31, lengthMeters: 43 },
    atATime: { kind: 'set', paddocks: 2 },
    units,
    settings: startSettings(MATERIALS_SETTINGS, units),
    comparison: startSettings(COMPARISON_SETTINGS, units),
  } as const;
  return materialsBlock(plan, NOTHING_TYPED, { row: 1, column: 1 });
}

function taskOf(name: string, book: Book, content: BlockContent): TypedTask {
  const units = readUnits(content)!;
  const own = withOwnSettings(content, [...MATERIALS_SETTINGS, ...COMPARISON_SETTINGS], units);
  const task: TypedTask = { name, content: own, rebuild: (changed) => rebuild(book, changed) };
  return { ...task, content: withOwnInputs(own, composed(task, own)) };
}

function rebuild(book: Book, typed: BlockContent): Rebuilt {
  const changed = reading(typed);
  const read = readMaterials(changed);
  const units = readUnits(changed) ?? startUnits(book);
  const settings = settingsOnPage(MATERIALS_SETTINGS, read.settings, units);
  const comparison = settingsOnPage(COMPARISON_SETTINGS, read.comparison, units);
  const set = setOnPage(read, units);
  const { layout, list, problems } = layoutOnPage(book, read, units, settings.values.shape || 1);
  const plan = {
    layout,
    atATime: set.atATime,
    units,
    settings: settings.values,
    comparison: comparison.values,
    ...(list && { list }),
  };
  const all = [
    ...settings.problems,
    ...comparison.problems,
    ...set.problems,
    ...read.problems,
    ...read.grid.problems,
    ...problems,
  ];
  const compose = () => materialsBlock(plan, read.typed, changed.info);
  return over(typed, all, compose);
}

/** Paddocks that stand fenced at a time; two where the table does not say. */
function setOnPage({ atATime }: MaterialsRead, units: UnitSystem) {
  if (atATime?.kind === 'all') return { atATime, problems: [] };
  const together = { key: 'together', label: 'Paddocks that stand together', note: '' } as const;
  const spec = { ...together, unit: 'paddocks', start: 2, min: 1, whole: true } as const;
  const read = { values: atATime ? { together: atATime.paddocks } : {}, problems: [] };
  const { values, problems } = settingsOnPage([spec], read, units);
  return { atATime: { kind: 'set', paddocks: values.together ?? 1 } as const, problems };
}

const listsRead = new Map<string, ReturnType<typeof readLists>>();

/** The lists are nobody's to change here. */
function listsOf(book: Book, units: UnitSystem): ReturnType<typeof readLists> {
  const key = `${units}, ${book.overview.locale}`;
  const lists = listsRead.get(key) ?? readLists(growersOwn(book), units);
  listsRead.set(key, lists);
  return lists;
}

/** As the page begins: equal paddocks where the table was made of them, else the list. */
function layoutOnPage(book: Book, read: MaterialsRead, units: UnitSystem, shape: number) {
  if ('rows' in read.grid.values) {
    // Where the page asks for a number, it is given.
    const asked = { rows: 3, columns: 5, width: 31, length: 43 };
    const { values, problems } = settingsOnPage(
      GRID_SETTINGS,
      { values: { ...asked, ...read.grid.values }, problems: [] },
      units,
    );
    const length = (value: number | undefined): number => toInside(value ?? 0, 'length', units);
    const { rows = 0, columns = 0 } = values;
    const sides = { widthMeters: length(values.width), lengthMeters: length(values.length) };
    return { layout: { kind: 'grid', rows, columns, ...sides } as Layout, problems };
  }
  const { chosen, paddocks } = listsOf(book, units);
  const list = chosen.paddocks as unknown as PaddockList;
  const tab = book.tabs.find(({ name }) => name === list.tab)!;
  const laid = laidPaddocks(tab, list, paddocks, { system: units, comma: false }, shape);
  const touching = read.touching ?? 'lengths';
  return {
    layout: { kind: 'list', touching, paddocks: laid.paddocks } as Layout,
    list: { tab, list },
    problems: laid.problems.map(({ sentence }) => sentence),
  };
}
