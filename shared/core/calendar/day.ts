/**
 * A calendar day as a whole number: days since 1970-01-01 in the proleptic Gregorian calendar.
 *
 * The core has no Date, no clock and no time zone: a day is a day on the farm, whatever the zone of the
 * machine. Conversion to and from spreadsheet dates happens at the edges.
 */
export type Day = number;

const DAYS_PER_400_YEARS = 146_097;
const DAYS_0000_03_01_TO_1970_01_01 = 719_468;

/**
 * Day number of a civil date. The month runs 1–12.
 *
 * Source: H. Hinnant, "chrono-Compatible Low-Level Date Algorithms", days_from_civil (from memory).
 */
export function dayFromCivil(year: number, month: number, dayOfMonth: number): Day {
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_400_YEARS + dayOfEra - DAYS_0000_03_01_TO_1970_01_01;
}

/** Civil date of a day number: the inverse of dayFromCivil. */
export function civilFromDay(day: Day): { year: number; month: number; dayOfMonth: number } {
  const shifted = day + DAYS_0000_03_01_TO_1970_01_01;
  const era = Math.floor(shifted / DAYS_PER_400_YEARS);
  const dayOfEra = shifted - era * DAYS_PER_400_YEARS;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const dayOfMonth = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return { year, month, dayOfMonth };
}

/** Month of a day, 0 for January to 11 for December. */
export function monthIndex(day: Day): number {
  return civilFromDay(day).month - 1;
}

/** Day of the week, 0 for Sunday to 6 for Saturday. 1970-01-01 was a Thursday. */
export function weekday(day: Day): number {
  return (((day + 4) % 7) + 7) % 7;
}

/** ISO text of a day, "2026-04-01". */
export function isoFromDay(day: Day): string {
  const { year, month, dayOfMonth } = civilFromDay(day);
  return `${String(year).padStart(4, '0')}-${pad2(month)}-${pad2(dayOfMonth)}`;
}

/** Day of an ISO text "2026-04-01", or undefined where the text is not a real date. */
export function dayFromIso(text: string): Day | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (!match) return undefined;
  const day = dayFromCivil(Number(match[1]), Number(match[2]), Number(match[3]));
  return isoFromDay(day) === text.trim() ? day : undefined;
}

function pad2(value: number): string {
  return String(value).padStart(2, '0');
}
