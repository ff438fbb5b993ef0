/**
 * Ten farm books in the habits of as many countries, invented before anybody of them had seen how lists are read, each with
 * what a person reads there. Text is text, as it stood in the file: "12.10.2025" is no date cell, "@2026-04-10" is one, and
 * "=SUM(B2:B5)" is a formula. Areas in hectares, weights in kilograms.
 */

import type { StartCell } from '../../../src/headless';

export interface BookTruth {
  readonly paddocks: readonly (readonly [name: string, hectares: number])[];
  readonly lastUsed: Readonly<Record<string, string>>;
  readonly openFrom?: Readonly<Record<string, string>>;
  readonly openUntil?: Readonly<Record<string, string>>;
  /** From remarks: offered, not read. */
  readonly openFromOffered?: Readonly<Record<string, string>>;
  readonly closed?: Readonly<Record<string, readonly [from: string, to: string]>>;
  readonly groups: readonly (readonly [name: string, head: number, kg: number])[];
  readonly breeding?: readonly string[];
  readonly weighed?: Readonly<Record<string, string>>;
  /** Kilograms a day. */
  readonly gains?: Readonly<Record<string, number>>;
  readonly from?: Readonly<Record<string, string>>;
  readonly until: Readonly<Record<string, string>>;
  /** Where each stands and since when; null: not written. */
  readonly at: Readonly<Record<string, readonly [paddock: string, since: string | null]>>;
  /** No part of the farm; where it is read it must be told. */
  readonly shownAtLeast?: readonly string[];
}

export interface WrittenBook {
  readonly name: string;
  readonly locale: string;
  readonly today: string;
  readonly tabs: Readonly<Record<string, readonly (readonly (string | number)[])[]>>;
  readonly truth: BookTruth;
}

/** The tabs of a book as a file holds them. */
export function startTabs({ tabs }: WrittenBook): Record<string, StartCell[][]> {
  const all = Object.entries(tabs).map(([name, rows]) => [name, rows.map((row) => row.map(startCell))]);
  return Object.fromEntries(all);
}

function startCell(cell: string | number): StartCell {
  if (typeof cell === 'number' || cell.startsWith('=')) return cell;
  return cell.startsWith('@') ? { d: cell.slice(1) } : { text: cell };
}

export const TEN_BOOKS: readonly WrittenBook[] = [
  // Areas are in ar (100 m²). Two sub-headings part the list. The bills below are no paddocks. The weight is what they weigh now, not the slaughter weight. Sows and boar stand in the barn and are no growing pigs. Bachaue is wet until the middle of May: a remark, no certain date.
  {
    name: 'de-weiden',
    locale: 'de_DE',
    today: '2026-04-20',
    tabs: {
      Weiden: [
        ['Weideplan 2026'],
        [],
        ['Schlag', 'Größe (ar)', 'Zaun lfm', 'Bewuchs', 'Letzte Belegung bis', 'Anmerkung'],
        ['Oben am Wald'],
        ['Eichenhang', '28,5', 240, 'Kleegras', '12.10.2025'],
        ['Hüttenwiese', 41, 260, 'Gras', '30.09.2025'],
        ['Kiesgrube', '17,2', 180, 'Brache', '', 'Wasserfass nötig'],
        ['Unten am Bach'],
        ['Bachaue', 62, 330, 'Gras', '15.08.2025', 'nass bis Mitte Mai'],
        ['Mühlwiese', '55,5', 310, 'Gras', '02.11.2025'],
        ['Erlenstück', 33, 245, 'Kleegras', '20.07.2025'],
        ['Summe', '=SUM(B5:B11)', '=SUM(C5:C11)'],
        [],
        ['Rechnungen'],
        ['Datum', 'Firma', 'Was', 'Betrag €'],
        ['@2026-01-14', 'Landhandel Huber', 'Gerste 2 t', '486,00'],
        ['@2026-02-03', 'Zaunbau Moser', '5 Netze', '612,50'],
        ['@2026-03-22', 'Tierarzt', 'Wurmkur', '94,20'],
      ],
      Bestand: [
        [
          'Gruppe',
          'Anzahl',
          'Gewicht Ø',
          'Schlachtgewicht',
          'gewogen am',
          'steht auf',
          'seit',
          'Schlachttermin',
        ],
        ['Läufer Frühjahr', 14, '45 kg', '120 kg', '11.04.2026', 'Hüttenwiese', '13.04.2026', '15.08.2026'],
        ['Mastgruppe', 9, '82 kg', '125 kg', '11.04.2026', 'Eichenhang', '06.04.2026', '10.06.2026'],
        ['Sauen', 3, 'ca. 180 kg', '', '', 'Stall'],
        ['Eber', 1, '', '', '', 'Stall'],
        ['Gesamt', '=SUM(B2:B5)'],
      ],
    },
    truth: {
      paddocks: [
        ['Eichenhang', 0.285],
        ['Hüttenwiese', 0.41],
        ['Kiesgrube', 0.172],
        ['Bachaue', 0.62],
        ['Mühlwiese', 0.555],
        ['Erlenstück', 0.33],
      ],
      lastUsed: {
        Eichenhang: '2025-10-12',
        Hüttenwiese: '2025-09-30',
        Bachaue: '2025-08-15',
        Mühlwiese: '2025-11-02',
        Erlenstück: '2025-07-20',
      },
      groups: [
        ['Läufer Frühjahr', 14, 45],
        ['Mastgruppe', 9, 82],
      ],
      breeding: ['Sauen', 'Eber'],
      weighed: { 'Läufer Frühjahr': '2026-04-11', Mastgruppe: '2026-04-11' },
      at: { 'Läufer Frühjahr': ['Hüttenwiese', '2026-04-13'], Mastgruppe: ['Eichenhang', '2026-04-06'] },
      until: { 'Läufer Frühjahr': '2026-08-15', Mastgruppe: '2026-06-10' },
    },
  },
  // Both lists stand side by side on one tab. Dates are text, day first, two-digit years. La Mare is flooded until 15 May: only a remark says so.
  {
    name: 'fr-cahier',
    locale: 'fr_FR',
    today: '2026-05-04',
    tabs: {
      Feuil1: [
        ['Cahier des cochons'],
        [],
        [
          'Parc',
          'Surface (ha)',
          'Dernier passage',
          'Remarques',
          '',
          'Lot',
          'Nb',
          'Poids moy.',
          'Arrivés le',
          'Parc actuel',
          'Abattoir le',
        ],
        [
          'Le Chêne',
          '0,45',
          '12/11/25',
          '',
          '',
          'Printemps',
          16,
          '32 kg',
          '20/04/26',
          'Grand Pré',
          '15/09/26',
        ],
        ['Grand Pré', '0,80', '03/10/25', '', '', 'Les gros', 8, '78 kg', '10/02/26', 'Le Chêne', '30/06/26'],
        ['La Mare', '0,52', '28/09/25', "inondé jusqu'au 15 mai"],
        ['Les Noyers', '0,61', '15/10/25', '', '', 'Total', '=SUM(G4:G5)'],
        ['Derrière la grange', '0,38', '', 'pas encore clôturé au nord'],
        ['La Côte', '0,70', '20/08/25'],
        ['Total', '=SUM(B4:B9)'],
      ],
      Achats: [
        ['Date', 'Fournisseur', 'Quantité', 'Prix TTC'],
        ['04/03/26', 'Coop', '1,5 t orge', '412,00'],
        ['18/03/26', 'Coop', '500 kg pois', '198,50'],
      ],
    },
    truth: {
      paddocks: [
        ['Le Chêne', 0.45],
        ['Grand Pré', 0.8],
        ['La Mare', 0.52],
        ['Les Noyers', 0.61],
        ['Derrière la grange', 0.38],
        ['La Côte', 0.7],
      ],
      lastUsed: {
        'Le Chêne': '2025-11-12',
        'Grand Pré': '2025-10-03',
        'La Mare': '2025-09-28',
        'Les Noyers': '2025-10-15',
        'La Côte': '2025-08-20',
      },
      groups: [
        ['Printemps', 16, 32],
        ['Les gros', 8, 78],
      ],
      from: { Printemps: '2026-04-20', 'Les gros': '2026-02-10' },
      at: { Printemps: ['Grand Pré', null], 'Les gros': ['Le Chêne', null] },
      until: { Printemps: '2026-09-15', 'Les gros': '2026-06-30' },
      openFromOffered: { 'La Mare': '2026-05-15' },
    },
  },
  // Areas in m² as text with a point for thousands. "Última entrada desde/hasta" is the last stay, so "hasta" is when pigs were last there; it is no time in which the paddock is open. Four weight columns: what they weigh now is "Peso actual". A sold lot with no head left stands in a hidden row.
  {
    name: 'es-dehesa',
    locale: 'es_ES',
    today: '2026-10-12',
    tabs: {
      Cercas: [
        ['FINCA LOS QUEJIGOS'],
        ['', 'Superficie', 'Última entrada'],
        ['Cerca', 'm²', 'desde', 'hasta', 'Agua'],
        ['Cerca Alta', '12.500', '01/02/2026', '20/02/2026', 'charca'],
        ['Cerca Baja', '9.800', '21/02/2026', '14/03/2026', 'cuba'],
        ['El Pozo', '15.200', '15/03/2026', '08/04/2026', 'pozo'],
        ['Los Olivos', '7.400', '', '', 'cuba'],
        ['La Umbría', '11.000', '09/04/2026', '02/05/2026', 'charca'],
        ['Camino Viejo', '8.650', '03/05/2026', '20/05/2026', 'cuba'],
        ['TOTAL', '64.550'],
      ],
      Lotes: [
        [
          'Lote',
          'Cabezas',
          'Peso entrada (kg)',
          'Peso actual (kg)',
          'Peso en @',
          'Peso objetivo (kg)',
          'Fecha entrada',
          'Salida prevista',
          'Cerca',
        ],
        ['Otoño A', 18, 28, 61, 5.3, 150, '@2026-08-01', '@2027-01-20', 'Cerca Alta'],
        ['Otoño B', 12, 25, 48, 4.2, 150, '@2026-09-01', '@2027-02-20', 'Los Olivos'],
        ['Primavera (vendido)', 0, 30, 152, 13.2, 150, '@2026-01-10', '@2026-07-15'],
        ['Total', '=SUM(B2:B4)'],
      ],
      Pienso: [
        ['Mes', 'Kg', 'Euros'],
        ['Agosto', 1450, 510],
        ['Septiembre', 1720, 605],
      ],
    },
    truth: {
      paddocks: [
        ['Cerca Alta', 1.25],
        ['Cerca Baja', 0.98],
        ['El Pozo', 1.52],
        ['Los Olivos', 0.74],
        ['La Umbría', 1.1],
        ['Camino Viejo', 0.865],
      ],
      lastUsed: {
        'Cerca Alta': '2026-02-20',
        'Cerca Baja': '2026-03-14',
        'El Pozo': '2026-04-08',
        'La Umbría': '2026-05-02',
        'Camino Viejo': '2026-05-20',
      },
      groups: [
        ['Otoño A', 18, 61],
        ['Otoño B', 12, 48],
      ],
      from: { 'Otoño A': '2026-08-01', 'Otoño B': '2026-09-01' },
      until: { 'Otoño A': '2027-01-20', 'Otoño B': '2027-02-20' },
      at: { 'Otoño A': ['Cerca Alta', null], 'Otoño B': ['Los Olivos', null] },
    },
  },
  // No area anywhere: two sides with their unit. "Libero dal" (free since) means when the pigs went out last. Weights stand in a log on another tab; the latest one counts. Scrofe are sows.
  {
    name: 'it-recinti',
    locale: 'it_IT',
    today: '2026-05-11',
    tabs: {
      Recinti: [
        ['Recinto', 'Lunghezza', 'Larghezza', 'Libero dal', 'Note'],
        ['Querce', '90 m', '60 m', '3 ott 2025'],
        ['Castagno', '75 m', '55 m', '28 set 2025'],
        ['Vigna vecchia', '110 m', '40 m', '15 nov 2025', 'fango'],
        ['Fosso', '82,5 m', '50 m', '2 ago 2025'],
        ['Pianoro', '100 m', '70 m', '', 'mai usato'],
      ],
      Gruppi: [
        ['I maiali di quest’anno'],
        [],
        ['Gruppo', 'Capi', 'Razza', 'Dove', 'Dal', 'Macello'],
        ['Primavera', 12, 'incrocio', 'Pianoro', '4 mag 2026', '20 ott 2026'],
        ['Vecchi', 7, 'cinta', 'Querce', '27 apr 2026', '30 giu 2026'],
        ['Scrofe', 2, 'cinta', 'stalla'],
      ],
      Pesate: [
        ['Data', 'Gruppo', 'N. pesati', 'Peso medio kg'],
        ['@2026-03-15', 'Vecchi', 3, 71],
        ['@2026-04-12', 'Primavera', 4, '24,5'],
        ['@2026-04-26', 'Vecchi', 3, 88],
        ['@2026-05-08', 'Primavera', 4, '33,5'],
      ],
    },
    truth: {
      paddocks: [
        ['Querce', 0.54],
        ['Castagno', 0.4125],
        ['Vigna vecchia', 0.44],
        ['Fosso', 0.4125],
        ['Pianoro', 0.7],
      ],
      lastUsed: {
        Querce: '2025-10-03',
        Castagno: '2025-09-28',
        'Vigna vecchia': '2025-11-15',
        Fosso: '2025-08-02',
      },
      groups: [
        ['Primavera', 12, 33.5],
        ['Vecchi', 7, 88],
      ],
      weighed: { Primavera: '2026-05-08', Vecchi: '2026-04-26' },
      at: { Primavera: ['Pianoro', '2026-05-04'], Vecchi: ['Querce', '2026-04-27'] },
      until: { Primavera: '2026-10-20', Vecchi: '2026-06-30' },
      breeding: ['Scrofe'],
    },
  },
  // Two seasons side by side, pigs in and pigs out. What counts is the latest day out. Pinhal is in use since 16 May. Total weight stands beside average weight. Porcas and Varrasco are sows and a boar.
  {
    name: 'pt-parques',
    locale: 'pt_PT',
    today: '2026-06-08',
    tabs: {
      Parques: [
        ['', '', 'Época 2025', '', 'Época 2026'],
        ['Parque', 'Área (ha)', 'Entrada', 'Saída', 'Entrada', 'Saída'],
        ['Sobreiro', '0,90', '@2025-03-10', '@2025-03-28', '@2026-03-02', '@2026-03-20'],
        ['Fonte', '1,10', '@2025-03-29', '@2025-04-19', '@2026-03-21', '@2026-04-12'],
        ['Eira', '0,65', '@2025-04-20', '@2025-05-04', '@2026-04-13', '@2026-04-26'],
        ['Ribeira', '1,25', '@2025-09-01', '@2025-09-25'],
        ['Olival', '0,80', '@2025-05-05', '@2025-05-22', '@2026-04-27', '@2026-05-15'],
        ['Pinhal', '1,40', '', '', '@2026-05-16'],
      ],
      Porcos: [
        [
          'Lote',
          'Nº animais',
          'Peso total (kg)',
          'Peso médio (kg)',
          'Data pesagem',
          'Parque',
          'Desde',
          'Data de abate',
        ],
        ['Lote 1', 22, 1386, 63, '@2026-06-01', 'Pinhal', '@2026-05-16', '@2026-10-05'],
        ['Lote 2', 10, 290, 29, '@2026-06-01', 'Ribeira', '@2026-06-01', '@2026-12-10'],
        ['Porcas', 4, '', '', '', 'Casa'],
        ['Varrasco', 1, '', '', '', 'Casa'],
      ],
    },
    truth: {
      paddocks: [
        ['Sobreiro', 0.9],
        ['Fonte', 1.1],
        ['Eira', 0.65],
        ['Ribeira', 1.25],
        ['Olival', 0.8],
        ['Pinhal', 1.4],
      ],
      lastUsed: {
        Sobreiro: '2026-03-20',
        Fonte: '2026-04-12',
        Eira: '2026-04-26',
        Ribeira: '2025-09-25',
        Olival: '2026-05-15',
      },
      groups: [
        ['Lote 1', 22, 63],
        ['Lote 2', 10, 29],
      ],
      weighed: { 'Lote 1': '2026-06-01', 'Lote 2': '2026-06-01' },
      at: { 'Lote 1': ['Pinhal', '2026-05-16'], 'Lote 2': ['Ribeira', '2026-06-01'] },
      until: { 'Lote 1': '2026-10-05', 'Lote 2': '2026-12-10' },
      breeding: ['Porcas', 'Varrasco'],
    },
  },
  // Three lists one below the other on a tab. Areas in ha and m² mixed, unit in the cell. "Koppel" is Dutch for a group of pigs (not a paddock). The nets, posts and troughs are material, no pigs.
  {
    name: 'nl-percelen',
    locale: 'nl_NL',
    today: '2026-05-25',
    tabs: {
      Overzicht: [
        ['Percelen'],
        ['Naam', 'Opp.', 'Laatst gebruikt', 'Beschikbaar vanaf', 'Opmerking'],
        ['Achter de schuur', '0,35 ha', '14-10-2025'],
        ['Langs de sloot', '4200 m2', '02-09-2025', '01-06-2026', 'nat'],
        ['Boomgaard', '0,52 ha', '20-11-2025', '', 'niet tijdens pluk'],
        ['Hoge kamp', '0,61 ha', '18-08-2025'],
        ['Lage kamp', '3800 m2', '', '', 'nieuw'],
        [],
        ['Koppels'],
        ['Koppel', 'Aantal', 'Gem. gewicht', 'Staat in', 'Sinds', 'Naar slacht'],
        ['Voorjaar', 15, '38 kg', 'Hoge kamp', '18-05-2026', '10-10-2026'],
        ['Winter', 6, '95 kg', 'Boomgaard', '11-05-2026', '20-06-2026'],
        [],
        ['Materiaal'],
        ['Wat', 'Aantal', 'Lengte'],
        ['Flexinet', 8, '50 m'],
        ['Paaltjes', 45],
        ['Waterbak', 3],
      ],
      Voer: [
        ['Datum', 'Kilo', 'Leverancier'],
        ['03-05-2026', 800, 'Molen'],
        ['17-05-2026', 750, 'Molen'],
      ],
    },
    truth: {
      paddocks: [
        ['Achter de schuur', 0.35],
        ['Langs de sloot', 0.42],
        ['Boomgaard', 0.52],
        ['Hoge kamp', 0.61],
        ['Lage kamp', 0.38],
      ],
      lastUsed: {
        'Achter de schuur': '2025-10-14',
        'Langs de sloot': '2025-09-02',
        Boomgaard: '2025-11-20',
        'Hoge kamp': '2025-08-18',
      },
      openFrom: { 'Langs de sloot': '2026-06-01' },
      groups: [
        ['Voorjaar', 15, 38],
        ['Winter', 6, 95],
      ],
      at: { Voorjaar: ['Hoge kamp', '2026-05-18'], Winter: ['Boomgaard', '2026-05-11'] },
      until: { Voorjaar: '2026-10-10', Winter: '2026-06-20' },
    },
  },
  // Areas in m² with a blank for thousands. "Vilar sedan" (rests since) is the day the pigs went out. Work done below, naming paddocks again: no paddocks. Slaktvikt is the target.
  {
    name: 'sv-hagar',
    locale: 'sv_SE',
    today: '2026-06-15',
    tabs: {
      'Hagar 2026': [
        ['Hage', 'Yta', 'Vilar sedan', 'Öppen från', 'Stängsel'],
        ['Norra hagen', '5 200 m²', '2025-09-14', '', 'nät'],
        ['Södra hagen', '4 800 m²', '2025-08-30', '', 'nät'],
        ['Björkbacken', '7 350 m²', '2025-10-02', '', '2 trådar'],
        ['Ängen', '6 000 m²', '2025-07-20', '2026-07-01', '2 trådar'],
        ['Kvarnängen', '3 900 m²', '', '', 'nät'],
        ['Summa', '27 250 m²'],
        [],
        ['Skötsel'],
        ['Datum', 'Hage', 'Vad', 'Timmar'],
        ['2026-05-02', 'Ängen', 'putsat', 3],
        ['2026-05-09', 'Norra hagen', 'sått rajgräs', '2,5'],
      ],
      Grisar: [
        ['Grupp', 'Antal', 'Snittvikt', 'Vägd', 'Hage nu', 'Sedan', 'Slaktvikt', 'Slaktdatum'],
        ['Vårgrisar', 20, '41,5 kg', '2026-06-10', 'Björkbacken', '2026-06-08', '115 kg', '2026-10-01'],
        ['Ungsvin', 8, '74 kg', '2026-06-10', 'Norra hagen', '2026-06-05', '115 kg', '2026-08-01'],
        ['Suggor', 3, '190 kg'],
        ['Galt', 1, '220 kg'],
        ['Totalt', 32],
      ],
    },
    truth: {
      paddocks: [
        ['Norra hagen', 0.52],
        ['Södra hagen', 0.48],
        ['Björkbacken', 0.735],
        ['Ängen', 0.6],
        ['Kvarnängen', 0.39],
      ],
      lastUsed: {
        'Norra hagen': '2025-09-14',
        'Södra hagen': '2025-08-30',
        Björkbacken: '2025-10-02',
        Ängen: '2025-07-20',
      },
      openFrom: { Ängen: '2026-07-01' },
      groups: [
        ['Vårgrisar', 20, 41.5],
        ['Ungsvin', 8, 74],
      ],
      weighed: { Vårgrisar: '2026-06-10', Ungsvin: '2026-06-10' },
      at: { Vårgrisar: ['Björkbacken', '2026-06-08'], Ungsvin: ['Norra hagen', '2026-06-05'] },
      until: { Vårgrisar: '2026-10-01', Ungsvin: '2026-08-01' },
      breeding: ['Suggor', 'Galt'],
    },
  },
  // Headings in two rows. "Sidst brugt til" is the day pigs last left; "Lukket fra/til" is a time in which the fold is closed. Weight at arrival stands beside the weight now. Dates of the groups have month words.
  {
    name: 'da-folde',
    locale: 'da_DK',
    today: '2026-05-18',
    tabs: {
      Folde: [
        ['Folde og drift'],
        ['', 'Areal', 'Sidst brugt', 'Lukket'],
        ['Fold', 'm2', 'til', 'fra', 'til'],
        ['Fold 1', 3400, '@2025-10-11'],
        ['Fold 2', 3650, '@2025-09-20'],
        ['Fold 3', 4100, '@2025-08-25', '@2026-07-01', '@2026-07-31'],
        ['Fold 4', 2950],
        ['Fold 5', 5200, '@2025-11-03'],
        ['I alt', '=SUM(B4:B8)'],
      ],
      Hold: [
        ['Hold', 'Antal grise', 'Vægt ved indsættelse', 'Vægt nu', 'Indsat', 'Står i', 'Leveres'],
        ['Hold 12', 16, '28 kg', '44 kg', '1. april 2026', 'Fold 4', '20. september 2026'],
        ['Hold 11', 11, '30 kg', '86 kg', '12. januar 2026', 'Fold 3', '25. juni 2026'],
      ],
      Regnskab: [
        ['Dato', 'Tekst', 'Beløb'],
        ['03.02.2026', 'Foder', '2.350,00'],
        ['11.03.2026', 'Dyrlæge', '680,50'],
      ],
    },
    truth: {
      paddocks: [
        ['Fold 1', 0.34],
        ['Fold 2', 0.365],
        ['Fold 3', 0.41],
        ['Fold 4', 0.295],
        ['Fold 5', 0.52],
      ],
      lastUsed: {
        'Fold 1': '2025-10-11',
        'Fold 2': '2025-09-20',
        'Fold 3': '2025-08-25',
        'Fold 5': '2025-11-03',
      },
      closed: { 'Fold 3': ['2026-07-01', '2026-07-31'] },
      groups: [
        ['Hold 12', 16, 44],
        ['Hold 11', 11, 86],
      ],
      from: { 'Hold 12': '2026-04-01', 'Hold 11': '2026-01-12' },
      at: { 'Hold 12': ['Fold 4', null], 'Hold 11': ['Fold 3', null] },
      until: { 'Hold 12': '2026-09-20', 'Hold 11': '2026-06-25' },
    },
  },
  // Areas in dekar (1000 m²). A rented-out pasture stands below the sum in a hidden row and is no part of the farm now; if it is read it must be shown. Bekkedalen is soft until 1 July by a remark.
  {
    name: 'no-beiter',
    locale: 'nb_NO',
    today: '2026-06-22',
    tabs: {
      Beiter: [
        ['Beite', 'Dekar', 'Sist beitet', 'Merknad'],
        ['Skogkanten', '5,5', '14.09.2025'],
        ['Løkka', '4,2', '01.10.2025'],
        ['Bekkedalen', '7,0', '20.08.2025', 'bløtt til 1. juli'],
        ['Steinrøysa', '6,4'],
        ['Nyjordet', '4,8', '28.08.2025'],
        ['Sum', '27,9'],
        ['(utleid) Myra', '9,0', '', 'leid bort'],
      ],
      Griser: [
        ['Gruppe', 'Dyr', 'Snittvekt (kg)', 'Veid', 'Beite', 'Flyttet inn', 'Til slakteri'],
        ['Sommergris', 18, '47,5', '19.06.2026', 'Løkka', '15.06.2026', '05.10.2026'],
        ['Vårgris', 9, '88', '19.06.2026', 'Steinrøysa', '10.06.2026', '31.07.2026'],
        ['Purker', 2, '185', '', 'innhegning ved fjøset'],
      ],
    },
    truth: {
      paddocks: [
        ['Skogkanten', 0.55],
        ['Løkka', 0.42],
        ['Bekkedalen', 0.7],
        ['Steinrøysa', 0.64],
        ['Nyjordet', 0.48],
      ],
      lastUsed: {
        Skogkanten: '2025-09-14',
        Løkka: '2025-10-01',
        Bekkedalen: '2025-08-20',
        Nyjordet: '2025-08-28',
      },
      groups: [
        ['Sommergris', 18, 47.5],
        ['Vårgris', 9, 88],
      ],
      weighed: { Sommergris: '2026-06-19', Vårgris: '2026-06-19' },
      at: { Sommergris: ['Løkka', '2026-06-15'], Vårgris: ['Steinrøysa', '2026-06-10'] },
      until: { Sommergris: '2026-10-05', Vårgris: '2026-07-31' },
      breeding: ['Purker'],
      openFromOffered: { Bekkedalen: '2026-07-01' },
      shownAtLeast: ['(utleid) Myra'],
    },
  },
  // Both lists on one tab. "Spelled since" (rested since) is the day the pigs went out. "Avg LW" is the live weight now, "Works weight" the target. "Truck booked" is when they go. The sum formula leaves out one paddock by mistake (6.15 for 7.25). Sows and boar are no growing pigs.
  {
    name: 'au-mobs',
    locale: 'en_AU',
    today: '2026-10-19',
    tabs: {
      Paddocks: [
        ['Gumtree pigs - spring 2026'],
        ['Pdk', 'Ha', 'Dam?', 'Spelled since', 'Fence', 'Carrying'],
        ['Creek', 1.2, 'Y', '02/08/26', '2 wire'],
        ['Shed', '0.8', 'N', '15 Sept 26', 'netting'],
        ['Top Dam', 1.65, 'Y', '21/06/26', '2 wire'],
        ['House', '.6', 'N', '', 'netting', 'Weaners'],
        ['Long', '1.1ha', 'N', '30/07/26', '2 wire'],
        ['Back Hill', 1.9, 'N', '11/05/26', '2 wire', 'Growers'],
        ['Total', '=SUM(B3:B8)'],
        [],
        ['MOBS'],
        ['Mob', 'Hd', 'Avg LW', 'Works weight', 'Weighed', 'In pdk', 'Moved in', 'Truck booked', 'Notes'],
        ['Weaners', 24, '22kg', '95kg', '14/10/26', 'House', '12/10/26', '08/03/27'],
        ['Growers', 15, '58kg', '95kg', '14/10/26', 'Back Hill', '05/10/26', '27/11/26', 'biggest first'],
        ['Sows (dry)', 5, '210kg', '', '', 'Sow yard'],
        ['Boar', 1, '', '', '', 'Sow yard', '', '', 'old fella'],
      ],
      Bills: [
        ['Date', 'Who', 'What', '$'],
        ['3/9/26', 'Rural', 'barley', '1,240'],
        ['17/9/26', 'Vet', 'vacc', '186.50'],
      ],
    },
    truth: {
      paddocks: [
        ['Creek', 1.2],
        ['Shed', 0.8],
        ['Top Dam', 1.65],
        ['House', 0.6],
        ['Long', 1.1],
        ['Back Hill', 1.9],
      ],
      lastUsed: {
        Creek: '2026-08-02',
        Shed: '2026-09-15',
        'Top Dam': '2026-06-21',
        Long: '2026-07-30',
        'Back Hill': '2026-05-11',
      },
      groups: [
        ['Weaners', 24, 22],
        ['Growers', 15, 58],
      ],
      weighed: { Weaners: '2026-10-14', Growers: '2026-10-14' },
      at: { Weaners: ['House', '2026-10-12'], Growers: ['Back Hill', '2026-10-05'] },
      until: { Weaners: '2027-03-08', Growers: '2026-11-27' },
      breeding: ['Sows (dry)', 'Boar'],
    },
  },
];
