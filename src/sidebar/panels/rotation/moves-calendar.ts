/** The moves as a calendar file, RFC 5545. */
import { generateIcsCalendar, type IcsEvent } from 'ts-ics';
import type { BarnDoorList, BarnDoorMove } from '../../../../shared/table/barn-door-list';
import { foldLines } from './fold-lines';

/** Noon of the day before: an all-day event begins at midnight. */
const REMINDER_HOURS = 12;

/**
 * One all-day event for each move, with a reminder at noon of the day before and what to carry.
 *
 * @param stamp when the file is made (DTSTAMP)
 */
export function movesCalendar({ moves, reminders }: BarnDoorList, stamp: Date): string {
  const text = generateIcsCalendar({
    version: '2.0',
    prodId: '-//Sounder Sheet//Rotation//EN',
    name: 'Pig moves',
    events: moves.map((move) => moveEvent(move, reminders, stamp)),
  });
  return foldLines(text);
}

function moveEvent(move: BarnDoorMove, reminders: readonly string[], stamp: Date): IcsEvent {
  const { summary, what } = wordsOf(move);
  const description = [...what, ...reminders].join('\n');
  return {
    uid: `${move.date}-${slug(move.group)}@sounder-sheet.invalid`,
    stamp: { date: stamp },
    start: { type: 'DATE', date: new Date(`${move.date}T00:00:00Z`) },
    duration: { days: 1 },
    summary,
    description,
    // The grower is free at other hours of the day.
    timeTransparent: 'TRANSPARENT',
    alarms: [
      {
        action: 'DISPLAY',
        description: `Tomorrow: ${summary}`,
        trigger: { type: 'relative', value: { before: true, hours: REMINDER_HOURS } },
      },
    ],
  };
}

function wordsOf({ group, from, to, days, carry }: BarnDoorMove): { summary: string; what: string[] } {
  if (to === undefined) return { summary: `${group} leave the pasture`, what: [`From ${from}.`] };
  return {
    summary: `Move ${group} to ${to}`,
    what: [`From ${from}, for ${days} ${days === 1 ? 'day' : 'days'}.`, `Carry: ${carry.join('; ')}.`],
  };
}

/** Letters and numbers of any script, the rest as "-". */
function slug(name: string): string {
  return encodeURIComponent(name.trim().toLowerCase().replace(/\s+/g, '-'));
}
