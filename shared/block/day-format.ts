/** How days look in tables of ours: with the weekday, month and weekday in the words of the sheet's locale. */
export const DAY_FORMAT = 'ddd d mmm yyyy';
/** Pixels of a column in which such a day stands whole. Looked at, judgement. */
export const DAY_WIDTH = 126;
