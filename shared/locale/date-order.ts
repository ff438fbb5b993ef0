import { onceEach } from './once-each';

/** In which order people of the spreadsheet's locale write a date; undefined where it is not known. */
export type DateOrder = 'dmy' | 'mdy' | undefined;

/** Whether people of a spreadsheet locale such as "en_US" write the day or the month of a date first. */
export const dateOrder = onceEach((locale): DateOrder => {
  try {
    const parts = new Intl.DateTimeFormat(locale.replace('_', '-')).formatToParts(0);
    const at = (wanted: string): number => parts.findIndex(({ type }) => type === wanted);
    if (at('year') < at('day')) return undefined;
    return at('day') < at('month') ? 'dmy' : 'mdy';
  } catch {
    // An unknown locale: what may be two days is asked.
    return undefined;
  }
});
