/** Days in remarks, and sums of money that are none. */
import { expect, test } from 'vitest';
import { dayFromIso, isoFromDay } from '../../shared/core/calendar/day';
import { closingRemarkDay, onlyDayIn, openingRemarkDay } from '../../shared/lists/remark-day';
import { textDay } from '../../shared/lists/text-day';

const TODAY = dayFromIso('2026-05-04')!;

test.each([
  ['wet until 1 July', '2026-07-01'],
  ['wet until 1 July 2027', '2027-07-01'],
  ['nass bis Juni', '2026-06-01'],
  ['let until 1 July, €200', '2026-07-01'],
  ['let for €200, no day', undefined],
])('%s: %s', (text, iso) => {
  const day = openingRemarkDay(text, 'dmy', TODAY);
  expect(day === undefined ? undefined : isoFromDay(day)).toBe(iso);
});

test.each([
  ['shoats here. OUT by 20 August for harvest', '2026-08-20'],
  ['raus bis 20.8.', '2026-08-20'],
  ['sortir avant le 20 août', '2026-08-20'],
  ['eruit voor 20 augustus', '2026-08-20'],
  ['wet until 1 July', undefined],
])('out by: %s: %s', (text, iso) => {
  const day = closingRemarkDay(text, 'dmy', TODAY);
  expect(day === undefined ? undefined : isoFromDay(day)).toBe(iso);
  if (iso) expect(openingRemarkDay(text, 'dmy', TODAY)).toBeUndefined();
});

test('a year has two or four digits', () => {
  expect(textDay('1 July 200', 'dmy', TODAY)).toBeUndefined();
  expect(textDay("1 July '27", 'dmy', TODAY)).toMatchObject({ first: dayFromIso('2027-07-01') });
  expect(textDay('1 July 27', 'dmy', TODAY)).toMatchObject({ first: dayFromIso('2027-07-01') });
});

test.each([
  ['done - moved off 11/20', '2026-11-20'],
  ['Tues 17/11', '2026-11-17'],
  ['3 pigs, 2 weeks', undefined],
  ['in 3/10, out 20/11', undefined],
  ['some time in Oct', undefined],
])('the only day in “%s” is %s', (text, day) => {
  const read = onlyDayIn(text, day === '2026-11-20' ? 'mdy' : 'dmy', dayFromIso('2026-11-24'));
  expect(read === undefined ? undefined : isoFromDay(read)).toBe(day);
});
