import type { GroupList, PaddockList } from '../../shared/lists/model';
import type { StaySource } from '../../shared/tasks/budget/stay-columns';
import type { Lists } from '../../src/sidebar/lists/use-lists';
import type { Book } from '../../src/sidebar/parts/use-book';

/** The grower's lists with their tabs, as the panels hand them on. */
export function sourceOf(book: Book, { paddocks, groups }: Lists['chosen']): StaySource {
  const tabOf = (name: string | undefined) => book.tabs.find((tab) => tab.name === name);
  const [paddockTab, groupTab] = [tabOf(paddocks?.tab), tabOf(groups?.tab)];
  return {
    ...(paddockTab && { paddocks: { tab: paddockTab, list: paddocks as unknown as PaddockList } }),
    ...(groupTab && { groups: { tab: groupTab, list: groups as unknown as GroupList } }),
  };
}

/** The file with the tabs that are the grower's: the map's paddocks are a list too. */
export function growersOwn({ overview, tabs }: Book): Book {
  const ours = new Set(overview.blocks.map(({ tab }) => tab));
  return { overview, tabs: tabs.filter(({ name }) => !ours.has(name)) };
}
