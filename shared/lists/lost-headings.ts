import { FIELD_LABELS, type FoundList, type GrowerList } from './model';
import * as words from './words';

type Field = keyof typeof FIELD_LABELS;

/** What the table was built with and the list does not have any more: its tab, headings; in one sentence each. */
export function lostHeadings(before: GrowerList | undefined, now: FoundList | undefined): string[] {
  const texts: Partial<Record<Field, string>> = before?.texts ?? {};
  const columns: Partial<Record<Field, number>> = now?.columns ?? {};
  const moved = before && now && before.tab !== now.tab ? [words.otherTab(before.tab, now.tab)] : [];
  const missed = (Object.entries(texts) as [Field, string][])
    .filter(([field]) => now !== undefined && columns[field] === undefined)
    .map(([field, text]) => words.headingLost(text, FIELD_LABELS[field]));
  return [...moved, ...missed];
}
