import { headingText, withColumn } from './list-columns';
import { MADE_HEADINGS } from './made-headings';
import type { FoundList, GroupField, GrowerList, PaddockField } from './model';

type Field = PaddockField | GroupField;

/** The heading of each column of a list, as it stands. */
export function headingTexts(list: FoundList): Readonly<Partial<Record<Field, string>>> {
  const columns = Object.entries(list.columns) as [Field, number][];
  return Object.fromEntries(columns.map(([field, column]) => [field, headingText(list, column)]));
}

/**
 * The list that was used before, with the columns chosen then, as it stands now: rows and columns may have been put in
 * since, so the words of the headings count and the letters of the columns only where two headings are alike. A
 * field whose heading is gone is taken as found, and so is a column that we have made. A tab may have another name by now: where no list stands on a tab of
 * that name, the one most alike elsewhere is meant. Undefined where none is alike.
 */
export function recalledList(
  found: readonly FoundList[],
  before: GrowerList | FoundList | undefined,
): FoundList | undefined {
  if (!before) return undefined;
  const texts: Partial<Record<Field, string>> =
    'headings' in before ? headingTexts(before) : (before.texts ?? {});
  const onTab = found.filter(({ tab }) => tab === before.tab);
  const near = onTab.length > 0 ? onTab : found;
  const inCommon = (list: FoundList): number =>
    Object.values(texts).filter((text) => list.headings.some((heading) => heading.text === text)).length;
  const likeness = (list: FoundList): number =>
    inCommon(list) + (list.headingRow === before.headingRow ? HALF : 0);
  const [list] = [...near].sort((a, b) => likeness(b) - likeness(a));
  if (!list || likeness(list) === 0) return undefined;
  if (onTab.length === 0 && 2 * inCommon(list) <= Object.keys(texts).length) return undefined;
  const fields = Object.entries(before.columns) as [Field, number][];
  // Units come from the headings as they stand now, for they may have been put right since.
  const bare = { ...list, columns: {}, units: {} } as unknown as FoundList;
  const recalled = fields.reduce((built, [field, was]) => {
    const column = columnNow(list, field, was, texts[field]);
    return column === undefined ? built : withColumn(built, field, column);
  }, bare);
  // A heading that the grower has left out on the page stays out.
  return 'headings' in before ? recalled : withMade(recalled, list);
}

/** A column that we made in the list since, or whose heading the grower typed as ours, counts too. */
function withMade(recalled: FoundList, found: FoundList): FoundList {
  const [taken, columns] = [recalled.columns, found.columns] as Partial<Record<Field, number>>[];
  return Object.entries(MADE_HEADINGS).reduce((list, [key, heading]) => {
    const field = key as keyof typeof MADE_HEADINGS;
    const column = columns![field];
    const isMade = column !== undefined && headingText(found, column) === heading;
    return taken![field] === undefined && isMade ? withColumn(list, field, column) : list;
  }, recalled);
}

/** Decides between lists that are equally alike. */
const HALF = 0.5;

function columnNow(list: FoundList, field: Field, was: number, text: string | undefined): number | undefined {
  if (text === undefined) return was;
  const alike = list.headings.filter((heading) => heading.text === text).map(({ column }) => column);
  if (alike.includes(was)) return was;
  const columns: Partial<Record<Field, number>> = list.columns;
  return alike[0] ?? columns[field];
}
