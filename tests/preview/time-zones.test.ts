/** Date cells are midnight in the spreadsheet's time zone; offsets are those of the IANA time zone database. */
import { describe, expect, test } from 'vitest';
import { openWorkbook } from '../../src/headless';
import { dateOfSerial, formatZoneDate, serialOfDate, serialOfDay } from '../../src/preview/engine/zone-time';

const serial = (year: number, month: number, day: number): number => serialOfDay(year, month, day)!;

test('serial numbers count from 30 December 1899', () => {
  // Microsoft's and Google's documents: 1 January 1900 is 2 here, 1 January 2008 is 39448.
  expect(serial(1900, 1, 1)).toBe(2);
  expect(serial(2008, 1, 1)).toBe(39_448);
  expect(serialOfDay(2026, 2, 29)).toBeUndefined();
});

describe('instants', () => {
  test.each([
    ['America/New_York', 2026, 1, 15, '2026-01-15T05:00:00.000Z'],
    ['America/New_York', 2026, 3, 8, '2026-03-08T05:00:00.000Z'], // the day the clock goes forward
    ['America/New_York', 2026, 11, 1, '2026-11-01T04:00:00.000Z'], // the day it goes back
    ['Europe/Berlin', 2026, 7, 1, '2026-06-30T22:00:00.000Z'],
    ['Pacific/Auckland', 2026, 1, 1, '2025-12-31T11:00:00.000Z'],
    ['Asia/Kolkata', 2028, 2, 29, '2028-02-28T18:30:00.000Z'],
    // Midnight did not exist: clocks went from 0:00 to 1:00.
    ['America/Sao_Paulo', 2018, 11, 4, '2018-11-04T03:00:00.000Z'],
  ])('midnight in %s on %i-%i-%i', (timeZone, year, month, day, instant) => {
    const date = dateOfSerial(serial(year, month, day), timeZone);
    expect(date.toISOString()).toBe(instant);
    const isSkipped = timeZone === 'America/Sao_Paulo';
    expect(serialOfDate(date, timeZone)).toBeCloseTo(serial(year, month, day) + (isSkipped ? 1 / 24 : 0), 9);
  });

  test('times of day go both ways', () => {
    const date = new Date('2026-04-01T13:45:30.000Z');
    const there = serialOfDate(date, 'Europe/Berlin');
    expect(dateOfSerial(there, 'Europe/Berlin')).toEqual(date);
  });
});

test('formatDate', () => {
  const date = new Date('2026-04-01T23:05:09.007Z');
  expect(formatZoneDate(date, 'Europe/Berlin', 'yyyy-MM-dd')).toBe('2026-04-02');
  expect(formatZoneDate(date, 'America/New_York', "EEE d MMM yyyy 'at' h:mm a")).toBe(
    'Wed 1 Apr 2026 at 7:05 PM',
  );
  expect(formatZoneDate(date, 'UTC', 'HH:mm:ss.SSS')).toBe('23:05:09.007');
  expect(() => formatZoneDate(date, 'UTC', 'yyyy-ww')).toThrow('"ww"');
});

test('dates in cells and TODAY follow the spreadsheet, not the script', async () => {
  const book = await openWorkbook({
    tabs: { A: [['2026-04-01', '=TODAY()', '=A1+1']] },
    timeZone: 'America/New_York',
    scriptTimeZone: 'Europe/Berlin',
    today: new Date('2026-04-02T02:00:00Z'), // still 1 April in New York
  });
  const midnight = new Date('2026-04-01T04:00:00Z');
  expect(book.values('A')).toEqual([[midnight, midnight, new Date('2026-04-02T04:00:00Z')]]);
  book.range('A', 'A2').setValue(new Date('2026-11-01T04:00:00Z'));
  expect(book.shownValues('A')[1]?.[0]).toBe('11/1/2026');
});
