/** A date as it travels, in words: "2026-06-10", "2026-06-10 14:30"; a time of day alone "10:30". */
export function dateWords(iso: string): string {
  const [day = '', time] = iso.split('T');
  if (time === undefined) return day;
  const clock = time.replace(/:00$/, '');
  // Day 0 of spreadsheets, on which a time without a date stands.
  return day === '1899-12-30' ? clock : `${day} ${clock}`;
}
