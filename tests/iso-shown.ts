/** "Wed 14 Oct 2026", as tables of ours show a day, as 2026-10-14; other words and blanks stay. */
export function isoShown(shown: string): string {
  const time = /^[A-Z][a-z]{2} \d/.test(shown) ? Date.parse(`${shown} UTC`) : Number.NaN;
  return Number.isNaN(time) ? shown : new Date(time).toISOString().slice(0, 10);
}
