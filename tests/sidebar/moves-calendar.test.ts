/** The calendar file, read back by another library (ical.js) and held against RFC 5545. */
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import type { BarnDoorList } from '../../shared/table/barn-door-list';
import { movesCalendar } from '../../src/sidebar/panels/rotation/moves-calendar';

const LIST: BarnDoorList = {
  title: 'Moves',
  moves: [
    {
      date: '2026-05-02',
      weekday: 'Sat',
      group: 'Early; the "big" ones, Größe 2',
      from: 'training pen or barn',
      to: 'North 1, upper half with a long name that makes the line longer than RFC 5545 allows, äöüß€🐖',
      days: 7,
      carry: ['fence 500 ft and posts', 'feed 400 lb for the stay', 'water 20 gal/day'],
    },
    {
      date: '2026-12-31',
      weekday: 'Thu',
      group: 'Late',
      from: 'North 1',
      to: '=BROOK\\4',
      days: 1,
      carry: ['fence and posts'],
    },
  ],
  reminders: ['Switch the energizer off before you touch or shift wire; its manual comes first.'],
};
const text = movesCalendar(LIST, new Date(Date.UTC(2026, 3, 20, 12)));

describe('the calendar file', () => {
  test('every line ends with CRLF and is 75 octets at most (RFC 5545, 3.1)', () => {
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n'))
      expect(new TextEncoder().encode(line).length, line).toBeLessThanOrEqual(75);
  });

  test('another library finds the moves in it, on their days, in their words', () => {
    const calendar = new ICAL.Component(ICAL.parse(text));
    const events = calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
    expect(events.map((event) => event.startDate.toString())).toEqual(['2026-05-02', '2026-12-31']);
    expect(events.map((event) => event.startDate.isDate)).toEqual([true, true]);
    expect(events.map((event) => event.endDate.toString())).toEqual(['2026-05-03', '2027-01-01']);
    expect(events.map((event) => event.summary)).toEqual(
      LIST.moves.map(({ group, to }) => `Move ${group} to ${to}`),
    );
    expect(events[0]?.description).toBe(
      'From training pen or barn, for 7 days.\nCarry: fence 500 ft and posts; feed 400 lb for the stay; water 20 gal/day.\nSwitch the energizer off before you touch or shift wire; its manual comes first.',
    );
  });

  test('has what RFC 5545 asks for: version, product, stamp, own names, and a reminder that says something', () => {
    const calendar = new ICAL.Component(ICAL.parse(text));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toMatch(/Sounder Sheet/);
    const events = calendar.getAllSubcomponents('vevent');
    const names = events.map((event) => String(event.getFirstPropertyValue('uid')));
    expect(new Set(names).size).toBe(2);
    const alarms = events.map((event) => event.getAllSubcomponents('valarm')[0]);
    expect(alarms.map((alarm) => alarm?.getFirstPropertyValue('description'))).toEqual(
      LIST.moves.map(({ group, to }) => `Tomorrow: Move ${group} to ${to}`),
    );
    for (const event of events) {
      expect(String(event.getFirstPropertyValue('dtstamp'))).toBe('2026-04-20T12:00:00Z');
      const [alarm] = event.getAllSubcomponents('valarm');
      expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
      expect(String(alarm?.getFirstPropertyValue('trigger'))).toBe('-PT12H');
    }
  });
});
