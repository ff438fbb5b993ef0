/** Six more farm books in the habits of as many countries. All of it is invented. */
import { type Book, tab } from './book';

const TODAY = '2026-04-14';

/** Numbers for names, a title in two rows, days as text with the day first, stones of nothing: plain kilograms. */
export const HOLDING: Book = {
  name: 'numbered plots and a barn list',
  locale: 'en_GB',
  order: 'dmy',
  system: 'metric',
  comma: false,
  today: TODAY,
  tabs: [
    tab('Ground', [
      ['Upper Thorn holding'],
      ['Plot', 'Acres', 'Pigs out', 'Shut until'],
      [1, '1.5 ac', '03/11/25', ''],
      [2, 1.25, '19/11/25', ''],
      [3, 1.1, '', '1 June'],
      [4, 0.9, 'Sept 2025', ''],
      ['', '=SUM(B3:B6)→4.75'],
      [],
      ['Gate keys hang in the dairy, the bottom trough leaks'],
    ]),
    tab('Pigs', [
      ['Batch', 'No.', 'Wt (kg)', 'Weighed', 'Paddock', 'Moved in'],
      ['Feb weaners', '14 pigs', '31 kg', '04/04/26', 2, '12/04/26'],
      ['Nov lot', 9, 68.5, '04/04/26', 4, '08/04/26'],
    ]),
  ],
};

/** Square metres parted by blanks, commas, months in words. */
export const FERME: Book = {
  name: 'parcelles en m²',
  locale: 'fr_FR',
  order: 'dmy',
  system: 'metric',
  comma: true,
  today: TODAY,
  tabs: [
    tab('Parcelles', [
      ['Parcelle', 'Surface (m²)', 'Dernier passage', 'Disponible à partir du', 'Remarques'],
      ['Le Clos', '1 250', '12 octobre 2025', '', ''],
      ['Grand Pré', '3 400', '02/11/2025', '', ''],
      ['La Noue', '2 850,5', '', '15 mai 2026', 'humide'],
      ['Les Pommiers', 2100, 'sept. 2025', '', ''],
      ['Totaux', '9 600,5'],
    ]),
    tab('Cochons', [
      ['Lot', 'Effectif', 'Poids moyen', 'Pesé le', 'GMQ', 'Parcelle', 'Depuis le'],
      ['Printemps', 11, '28,5 kg', '11 avril 2026', '0,6 kg', 'le clos', '10/04/2026'],
      ['Hiver', 7, '71 kg', '11 avril 2026', '0,8 kg', 'Grand Pré', '6 avril'],
    ]),
  ],
};

/** Blocks under sub-headings with the headings written again; weights in a log; a boar beside the growing pigs. */
export const GAARD: Book = {
  name: 'folde i to blokke',
  locale: 'da_DK',
  order: 'dmy',
  system: 'metric',
  comma: true,
  today: TODAY,
  tabs: [
    tab('Folde', [
      ['Nord for vejen'],
      ['Fold', 'Størrelse (ha)', 'Sidst brugt'],
      ['N1', '0,4', '3.10.2025'],
      ['N2', '0,55', '20.10.2025'],
      [],
      ['Syd for vejen'],
      ['Fold', 'Størrelse (ha)', 'Sidst brugt'],
      ['S1', '0,6', ''],
      ['S2', '0,35', 'november 2025'],
      ['I alt', '1,9'],
    ]),
    tab('Hold', [
      ['Hold', 'Antal', 'Fold', 'Siden'],
      ['Vårgrise', 13, 'N1', '9.4.2026'],
      ['Slagtesvin', 8, 'S2', '2.4.2026'],
      ['Orne', 1, '', ''],
    ]),
    tab('Vejninger', [
      ['Dato', 'Hold', 'Vægt kg'],
      ['1.3.2026', 'Vårgrise', '19,5'],
      ['1.3.2026', 'Slagtesvin', '61'],
      ['5.4.2026', 'vårgrise', '31,0'],
      ['5.4.2026', 'Slagtesvin', '84,5'],
    ]),
  ],
};

/** Units in a row of their own, sides instead of areas, two lists side by side. */
export const FINCA: Book = {
  name: 'ancho y largo',
  locale: 'es_ES',
  order: 'dmy',
  system: 'metric',
  comma: true,
  today: TODAY,
  tabs: [
    tab('Finca', [
      ['Potreros', '', '', '', '', 'Cerdos'],
      ['Potrero', 'Ancho', 'Largo', 'Último uso', '', 'Lote', 'Cabezas', 'Peso medio', 'Pesado el'],
      ['', '(m)', '(m)', '', '', '', '', '(kg)', ''],
      ['Encina', 60, '80', '05/10/2025', '', 'Primavera', 15, '26,5', '10/04/2026'],
      ['Arroyo', '45,5', 90, '', '', 'Cebo', 10, 72, '10/04/2026'],
      ['Loma', 70, 70, '22/11/2025'],
      ['Olivar', 50, 110, ''],
    ]),
  ],
};

/** No heading above the names, two seasons' last uses side by side, a word for names that is not known. */
export const PODERE: Book = {
  name: 'due stagioni',
  locale: 'it_IT',
  order: 'dmy',
  system: 'metric',
  comma: true,
  today: TODAY,
  tabs: [
    tab('Terreni 2026', [
      ['', 'ettari', 'Ultimo uso 2024', 'Ultimo uso 2025'],
      ['Quercia', '0,45', '20/09/2024', '03/10/2025'],
      ['Fosso', '0,6', '', '20/10/2025'],
      ['Colle', '0,38', '11/11/2024', ''],
    ]),
    tab('Branco', [
      ['Nucleo', 'Capi', 'Peso (kg)', 'Pesato il'],
      ['Giovani', 12, '24,5', '10/04/2026'],
      ['Pesanti', 6, '88', '10/04/2026'],
    ]),
  ],
};

/** Feet with marks and thousands, a shed list and bills that are none of the lists, days with words. */
export const HOMESTEAD: Book = {
  name: 'feet with marks',
  locale: 'en_US',
  order: 'mdy',
  system: 'US',
  comma: false,
  today: TODAY,
  tabs: [
    tab('Shed', [
      ['Item', 'How many', 'Length ft'],
      ['net', 6, 164],
      ['posts', 80, ''],
    ]),
    tab('Everything', [
      ['Pasture', 'Width', 'Length', 'Sq ft', 'Rested since'],
      ['Front', "120'", "210'", '', 'Oct 12, 2025'],
      ['Creek', '', '', '32,500', '11/2/25'],
      ['Pines', '100 ft', '305 ft', '', ''],
      [],
      ['Sounder', 'Hd', 'Avg wt', 'Weighed', 'Where', 'Since', 'Out'],
      ['Reds', 10, '55#', '4/11/26', 'Front', 'Sat Apr 11', '9/15/26'],
      ['Blues', 8, '130 lb', '4/11/26', 'creek', '4/9/26', '250 lb'],
      [],
      ['Feed', 'Paid'],
      ['@2026-03-02', 410.5],
      ['@2026-04-01', 388],
    ]),
  ],
};
