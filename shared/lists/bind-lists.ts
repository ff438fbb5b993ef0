import type { Book } from '../block/book';
import { cellOnTab } from '../block/cell-on-tab';
import { firstFew } from '../block/first-few';
import { listAgain } from './list-again';
import type { FoundList, GrowerList, ListSource, ListSources } from './model';
import { headingTexts } from './recalled-list';
import * as words from './words';

/**
 * The same lists where they stand in the file now, for formulas that look things up there: rows and columns may have
 * been put in, a list moved, a tab renamed since. Throws, with the cells, where a list *says* something else than it
 * did: other names, figures, fields or units, or another order.
 */
export function bindLists({ paddocks, groups }: ListSources, now: Book): ListSources {
  const bound = [paddocks && boundList(paddocks, now), groups && boundList(groups, now)] as const;
  const changed = bound.flatMap((one) => one?.changed ?? []);
  if (changed.length > 0) {
    throw new Error(words.listsChanged(firstFew(changed)));
  }
  return {
    ...(bound[0]?.source && { paddocks: bound[0].source }),
    ...(bound[1]?.source && { groups: bound[1].source }),
  };
}

interface Bound<List> {
  readonly source?: ListSource<List>;
  /** Cells that say something else, as they stand now. */
  readonly changed: readonly string[];
}

function boundList<List extends GrowerList>(before: ListSource<List>, now: Book): Bound<List> {
  const { list } = before;
  const again = listAgain(now, list) as (List & { headings: never }) | undefined;
  const tab = now.tabs.find(({ name }) => name === again?.tab);
  const fields = Object.keys(list.columns) as (keyof typeof list.columns)[];
  const isWhole =
    again && tab && fields.every((field) => again.columns[field] !== undefined && isUnit(list, again, field));
  if (!isWhole) {
    const first = Math.min(...fields.map((field) => Number(list.columns[field])));
    return { changed: [cellOnTab(list.tab, list.headingRow, first)] };
  }
  const source = { tab, list: { ...again, texts: headingTexts(again as unknown as FoundList) } };
  const [was, is] = [items(before, fields), items(source, fields)];
  const changed = Array.from({ length: Math.max(was.length, is.length) }, (_, i) => i).flatMap((i) => {
    const row = is[i]?.row ?? again.headingRow + 1 + i;
    return fields.flatMap((field, f) =>
      JSON.stringify(was[i]?.cells[f] ?? '') === JSON.stringify(is[i]?.cells[f] ?? '')
        ? []
        : [cellOnTab(again.tab, row, Number(again.columns[field]))],
    );
  });
  return { source, changed };
}

function isUnit(was: GrowerList, is: GrowerList, field: PropertyKey): boolean {
  const unitOf = ({ units }: GrowerList): unknown => (units as Record<PropertyKey, unknown>)[field];
  return unitOf(was) === unitOf(is);
}

/** The rows under the headings that hold anything the list is read for. */
function items<List extends GrowerList>(
  { tab, list }: ListSource<List>,
  fields: readonly (keyof List['columns'])[],
) {
  const columns = list.columns as Record<PropertyKey, number>;
  return tab.values.slice(list.headingRow, list.lastRow).flatMap((values, i) => {
    const cells = fields.map((field) => values[columns[field]! - 1] ?? '');
    return cells.every((cell) => cell === '') ? [] : [{ row: list.headingRow + 1 + i, cells }];
  });
}
