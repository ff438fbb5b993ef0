/** Texts in quotes, escaped signs and currency signs in a number format: their letters mean themselves. */
const TEXTS = /("[^"]*"|\\.|\[\$[^\]]*\])/;

/** Changes a number format, but not the texts in it. */
export function outsideTexts(pattern: string, change: (part: string) => string): string {
  return pattern
    .split(TEXTS)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join('');
}
