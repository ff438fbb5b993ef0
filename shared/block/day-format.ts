/** How days look in tables of ours: with the weekday, month and weekday in the words of the sheet's locale. */
export const DAY_FORMAT = 'ddd d mmm yyyy';
