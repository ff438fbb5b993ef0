import { FIELD_LABELS, type FoundList, type GrowerList } from '../../../shared/lists/model';

type Field = keyof typeof FIELD_LABELS;

/** Headings that the table was built with and that the list does not have any more, in one sentence each. */
export function lostHeadings(before: GrowerList | undefined, now: FoundList | undefined): string[] {
  const texts: Partial<Record<Field, string>> = before?.texts ?? {};
  const columns: Partial<Record<Field, number>> = now?.columns ?? {};
  return (Object.entries(texts) as [Field, string][])
    .filter(([field]) => now !== undefined && columns[field] === undefined)
    .map(
      ([field, text]) =>
        `The heading “${text}” stood for “${FIELD_LABELS[field]}” when the table was built and is not in the list any more: nothing is read for it. Choose another under “Which heading stands for what”.`,
    );
}
