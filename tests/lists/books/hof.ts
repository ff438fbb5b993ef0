import { type Book, tab } from './book';

/** A book in metres of a place that writes decimal commas and days with dots. Invented. */
export const HOF: Book = {
  name: 'Koppeln and decimal commas',
  locale: 'de_DE',
  order: 'dmy',
  system: 'metric',
  comma: true,
  today: '2026-04-14',
  tabs: [
    tab('Koppeln', [
      ['Hof Lindental - Koppeln 2026'],
      [],
      ['Koppel', 'Fläche (ha)', 'Breite m', 'Länge m', 'zuletzt belegt', 'frei ab', 'Bemerkung'],
      ['Nord 1', '0,25', 50, 50, '03.10.2025'],
      ['Nord 2', 0.3, 50, 60, '@2025-10-20', '', 'grenzt an Nord 1'],
      ['Hang', '0,45', 60, 75],
      ['Wald', 0.8, 80, 100, '@2025-11-08'],
      ['Bruch', '1,2', 100, 120, '', '01.06.2026', 'nass bis Juni'],
      ['Hof', 0.15, 30, 50],
      ['Summe', '3,15'],
    ]),
    tab('Schweine', [
      ['Gruppe', 'Anzahl', 'Gewicht kg', 'gewogen am', 'Zunahme kg/Tag'],
      ['Ferkel', 12, '28,5', '@2026-04-10', '0,6'],
      ['Mast', 6, '62,0 kg', '10.04.2026', 0.75],
    ]),
  ],
};
