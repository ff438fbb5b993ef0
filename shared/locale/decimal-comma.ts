import { onceEach } from './once-each';

/** Whether people of a spreadsheet locale such as "de_DE" write 1,5 where others write 1.5. */
export const decimalComma = onceEach((locale): boolean => {
  try {
    return new Intl.NumberFormat(locale.replace('_', '-')).format(1.5).includes(',');
  } catch {
    // An unknown locale: the answer that is right everywhere, because it writes fractions.
    return true;
  }
});
