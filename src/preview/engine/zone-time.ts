/**
 * Spreadsheet serial numbers and instants, in a given time zone.
 *
 * A date cell holds wall-clock time: days since 30 December 1899, the fraction being the time of day. Scripts see
 * an instant instead, namely that wall-clock time in the spreadsheet's time zone.
 */

export const DAY_MS = 86_400_000;
/** 1 January 1970 as a spreadsheet serial number. */
export const UNIX_EPOCH_SERIAL = 25_569;

/** Furthest days from 1970 that an instant can tell (ECMA-262), less those that zones and their changes take. */
const FURTHEST_DAYS = 100_000_000 - 3;

/** Whether a serial number is a day that scripts can be given; further away it is no more than a number. */
export function hasInstant(serial: number): boolean {
  return Math.abs(serial - UNIX_EPOCH_SERIAL) <= FURTHEST_DAYS;
}

const formatters = new Map<string, Intl.DateTimeFormat>();

function formatterFor(timeZone: string): Intl.DateTimeFormat {
  let formatter = formatters.get(timeZone);
  if (!formatter) {
    formatter = new Intl.DateTimeFormat('en-US', {
      timeZone,
      hourCycle: 'h23',
      era: 'short',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
    formatters.set(timeZone, formatter);
  }
  return formatter;
}

/** Wall-clock time of an instant, as if it were UTC milliseconds. */
function wallMilliseconds(instantMs: number, timeZone: string): number {
  const fields: Record<string, string> = {};
  for (const part of formatterFor(timeZone).formatToParts(instantMs)) fields[part.type] = part.value;
  const field = (name: string): number => Number(fields[name]);
  const year = fields.era === 'BC' ? 1 - field('year') : field('year');
  const wall = new Date(
    Date.UTC(2000, field('month') - 1, field('day'), field('hour'), field('minute'), field('second')),
  );
  wall.setUTCFullYear(year, field('month') - 1, field('day'));
  return wall.getTime() + (((instantMs % 1000) + 1000) % 1000);
}

/** The instant of a serial number. Where the clock skips that time, the time just after the jump. */
export function dateOfSerial(serial: number, timeZone: string): Date {
  const wall = Math.round((serial - UNIX_EPOCH_SERIAL) * DAY_MS);
  const offsetAt = (instantMs: number): number => wallMilliseconds(instantMs, timeZone) - instantMs;
  const before = offsetAt(wall - DAY_MS);
  const after = offsetAt(wall + DAY_MS);
  for (const offset of [before, after]) {
    if (offsetAt(wall - offset) === offset) return new Date(wall - offset);
  }
  return new Date(wall - before);
}

/** The serial number that shows the instant's wall-clock time. */
export function serialOfDate(date: Date, timeZone: string): number {
  return wallMilliseconds(date.getTime(), timeZone) / DAY_MS + UNIX_EPOCH_SERIAL;
}

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);
const WEEKDAYS = 'Sunday Monday Tuesday Wednesday Thursday Friday Saturday'.split(' ');
const pad = (value: number, width: number): string => String(value).padStart(width, '0');

/**
 * Utilities.formatDate for the letters a script of ours may use: y M d E H h m s S a, and 'quoted text'.
 * Any other letter is refused, so that a pattern the stand-in cannot do is noticed.
 */
export function formatZoneDate(date: Date, timeZone: string, pattern: string): string {
  const wall = new Date(wallMilliseconds(date.getTime(), timeZone));
  return pattern.replace(/'([^']*)'|([A-Za-z])\2*/g, (run: string, quoted: string | undefined) => {
    if (quoted !== undefined) return quoted === '' ? "'" : quoted;
    return formatField(run, wall);
  });
}

function formatField(run: string, wall: Date): string {
  const width = run.length;
  switch (run[0]) {
    case 'y':
      return width === 2 ? pad(wall.getUTCFullYear() % 100, 2) : pad(wall.getUTCFullYear(), width);
    case 'M': {
      const name = MONTHS[wall.getUTCMonth()] ?? '';
      if (width >= 4) return name;
      return width === 3 ? name.slice(0, 3) : pad(wall.getUTCMonth() + 1, width);
    }
    case 'd':
      return pad(wall.getUTCDate(), width);
    case 'E': {
      const name = WEEKDAYS[wall.getUTCDay()] ?? '';
      return width >= 4 ? name : name.slice(0, 3);
    }
    case 'H':
      return pad(wall.getUTCHours(), width);
    case 'h':
      return pad(wall.getUTCHours() % 12 || 12, width);
    case 'm':
      return pad(wall.getUTCMinutes(), width);
    case 's':
      return pad(wall.getUTCSeconds(), width);
    case 'S':
      return pad(wall.getUTCMilliseconds(), width);
    case 'a':
      return wall.getUTCHours() < 12 ? 'AM' : 'PM';
    default:
      throw new Error(`Utilities.formatDate: the preview cannot do the letters "${run}"`);
  }
}

/** Serial number of a calendar day. */
export function serialOfDay(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(2000, month - 1, day));
  date.setUTCFullYear(year, month - 1, day);
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  return date.getTime() / DAY_MS + UNIX_EPOCH_SERIAL;
}
