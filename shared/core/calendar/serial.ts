import type { Day } from './day';

/** Spreadsheet serial of 1970-01-01, where serial 0 is 1899-12-30. */
const SERIAL_OF_1970 = 25_569;

/** The number that a date cell holds for a day; free of time zones and daylight saving. */
export function serialFromDay(day: Day): number {
  return day + SERIAL_OF_1970;
}

/** The day that a date cell's whole number stands for. */
export function dayFromSerial(serial: number): Day {
  return serial - SERIAL_OF_1970;
}
