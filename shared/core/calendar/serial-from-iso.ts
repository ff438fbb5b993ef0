import { dayFromIso } from './day';
import { serialFromDay } from './serial';

const SECONDS_A_DAY = 86_400;

/** The number that a date cell holds for "2026-04-01" or "2026-04-01T14:30:00"; undefined where that is no date. */
export function serialFromIso(iso: string): number | undefined {
  const [date = '', time = '00:00:00'] = iso.split('T');
  const day = dayFromIso(date);
  if (day === undefined) return undefined;
  const [hours = 0, minutes = 0, seconds = 0] = time.split(':').map(Number);
  return serialFromDay(day) + (hours * 3600 + minutes * 60 + seconds) / SECONDS_A_DAY;
}
