import { cellOnTab } from '../block/cell-on-tab';
import type { TabContent } from '../contract';
import { firstOf, headingText } from './list-columns';
import { type Doubt, FIELD_LABELS, type FoundList, type ListProblem } from './model';
import * as words from './words';

/** The question for each two columns that may both be a field, with what stands in them. */
export function columnDoubts(
  tab: TabContent | undefined,
  list: FoundList | undefined,
): readonly ListProblem[] {
  return (list?.doubts ?? []).map((doubt) => {
    const cell = cellOnTab(list!.tab, list!.headingRow, doubt.column);
    const [one, other] = doubtWords(tab, list!, doubt);
    return { cell, sentence: words.whichIs(cell, FIELD_LABELS[doubt.field], one, other) };
  });
}

/** The two columns of a doubt: “Weight now” (44 · 86). */
export function doubtWords(
  tab: TabContent | undefined,
  list: FoundList,
  { column, other }: Doubt,
): readonly [string, string] {
  const said = (one: number): string => `“${headingText(list, one)}” (${firstOf(tab, list, one)})`;
  return [said(column), said(other)];
}
