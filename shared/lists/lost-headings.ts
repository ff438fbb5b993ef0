import { FIELD_LABELS, type FoundList, type GrowerList } from './model';

type Field = keyof typeof FIELD_LABELS;

/** What the table was built with and the list does not have any more: its tab, headings; in one sentence each. */
export function lostHeadings(before: GrowerList | undefined, now: FoundList | undefined): string[] {
  const texts: Partial<Record<Field, string>> = before?.texts ?? {};
  const columns: Partial<Record<Field, number>> = now?.columns ?? {};
  const moved =
    before && now && before.tab !== now.tab
      ? [`The table was built from the list on “${before.tab}”; it is now read from “${now.tab}”.`]
      : [];
  const missed = (Object.entries(texts) as [Field, string][])
    .filter(([field]) => now !== undefined && columns[field] === undefined)
    .map(
      ([field, text]) =>
        `The heading “${text}” stood for “${FIELD_LABELS[field]}” when the table was built and is not in the list any more: nothing is read for it. Choose another under “Which heading stands for what”.`,
    );
  return [...moved, ...missed];
}
