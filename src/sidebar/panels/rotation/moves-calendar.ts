/** The moves as a calendar file, RFC 5545. */
import type { BarnDoorList, BarnDoorMove } from '../../../../shared/table/barn-door-list';
import { foldLine } from './fold-line';

/** Noon of the day before: an all-day event begins at midnight. */
const REMINDER_HOURS = 12;

/**
 * One all-day event for each move, with a reminder at noon of the day before and what to carry.
 *
 * @param stamp when the file is made (DTSTAMP)
 */
export function movesCalendar({ moves, reminders }: BarnDoorList, stamp: Date): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Sounder Sheet//Rotation//EN',
    'X-WR-CALNAME:Pig moves',
    ...moves.flatMap((move) => eventLines(move, reminders, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${foldLine(line)}\r\n`).join('');
}

function eventLines(move: BarnDoorMove, reminders: readonly string[], stamp: Date): string[] {
  const { summary, what } = wordsOf(move);
  return [
    'BEGIN:VEVENT',
    `UID:${move.date}-${slug(move.group)}@sounder-sheet.invalid`,
    `DTSTAMP:${stamp.toISOString().replace(/[-:]|\.\d+/g, '')}`,
    `DTSTART;VALUE=DATE:${move.date.replace(/-/g, '')}`,
    'DURATION:P1D',
    `SUMMARY:${asText(summary)}`,
    `DESCRIPTION:${asText([...what, ...reminders].join('\n'))}`,
    // The grower is free at other hours of the day.
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${asText(`Tomorrow: ${summary}`)}`,
    `TRIGGER:-PT${REMINDER_HOURS}H`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** A value of type TEXT: RFC 5545, 3.3.11. */
function asText(words: string): string {
  return words.replace(/[\\;,]/g, '\\$&').replace(/\r?\n|\r/g, '\\n');
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
