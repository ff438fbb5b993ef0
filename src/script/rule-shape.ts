/**
 * A rule's formula without what differs from one build to the next: texts, row numbers, the separator of the place.
 * The builder's rules are known again by it; another of the same shape in the same column counts as the builder's.
 */
export function ruleShape(formula: string): string {
  return formula
    .replace(/"(?:[^"]|"")*"/g, '""')
    .replace(/[\d\s$]/g, '')
    .replace(/;/g, ',')
    .toUpperCase();
}
