/**
 * The bibliography: every source that a figure rests on, by id. How sure each figure is stands where the figure
 * is used, in the catalogue. Documents that serve as checks only are cited in tests/published.
 */
export const SOURCES = {
  geometry: { citation: 'Plane geometry and counting; nothing to look up.' },
  contract: { citation: 'Definition of the term, as used in this sheet.' },
  practice: { citation: 'Common practice among pig keepers; no source.' },
  judgement: { citation: 'Judgement of the makers of this sheet; no source.' },
  karney2013: {
    citation:
      'C. F. F. Karney, "Algorithms for geodesics", Journal of Geodesy 87:43–55, 2013, as the library geographiclib-geodesic, ellipsoid WGS84.',
    url: 'doi.org/10.1007/s00190-012-0578-z',
  },
  extensionHogFence: {
    citation:
      'Extension question and answer "What type of fence will I need to pasture hogs?" (a reprint, believed to be eXtension).',
  },
  fibl2019: {
    citation:
      'B. Früh, FiBL, bioaktuell.ch, November 2019: two wires at 15–30 and 40–60 cm; with piglets the lowest at 15 cm.',
  },
  countrySmallholder: {
    citation: 'The Country Smallholder (magazine): one wire about 8 in (20 cm) high to train weaners.',
  },
  boarFenceTrial: {
    citation:
      '"Evaluation of different designs of temporary electric fence systems for the protection of maize against wild boar", Slovenia (abstract): wires 15, 15 and 30 cm apart, or 25 and 25 cm; none was broken through.',
  },
  petherick1983: {
    citation: 'J. C. Petherick, Animal Production, 1983: body measures grow with the cube root of weight.',
  },
  gerrishFencing: {
    citation: 'J. Gerrish, quoted in "Common fencing mistakes", Beef Magazine, about 2008.',
    url: 'beefmagazine.com/pasture-range/grazing-programs/0301-common-fencing-mistakes',
  },
  nrcsVirginia382: {
    citation: 'USDA-NRCS Virginia, Conservation Practice Job Sheet 382(c), June 2009.',
  },
  threeRods: {
    citation:
      'die grüne, 2023: three rods of 1 m, 3 m apart; F. Launay, Institut de l’Élevage, in La France Agricole: at least three rods of 1 m in parallel.',
  },
  iecFenceAnnex: {
    citation:
      'IEC 60335-2-76, installation annex for electric animal fences, as printed in two makers’ leaflets.',
  },
  resistivityTables: {
    citation: 'Tables of electrical resistivity, The Engineering ToolBox and an encyclopedia table.',
    url: 'engineeringtoolbox.com',
  },
  stainless304: {
    citation: 'Data sheets of AISI 304 (1.4301) stainless steel: 72 µΩ·cm at 20 °C.',
    url: 'roymech.co.uk/material-properties/metals/ferrous-metals/304-Stainless-Steel-Q0006Q',
  },
  lineTheory: { citation: 'Textbook theory of the uniform line with leakage, steady state.' },
  dalton2016: {
    citation: 'C. Dalton, power-fence glossary, 2016.',
    url: 'woolshed1.blogspot.com',
  },
  nrc2012: {
    citation:
      'National Research Council, Nutrient Requirements of Swine, 11th edition, 2012, with Table 16-1.',
  },
  merckPigs: {
    citation:
      'Merck Veterinary Manual, "Feeding levels and practices in pigs", 2015: 3,300 kcal of ME a kg, as of maize and soybean meal.',
    url: 'merckvetmanual.com/management-and-nutrition/nutrition-pigs/feeding-levels-and-practices-in-pigs',
  },
  edwards2003: {
    citation:
      'S. A. Edwards, Proceedings of the Nutrition Society 62:257, 2003: outdoor pigs need about 15 % more energy under Northern European conditions; less than 5 % of it by grazing.',
  },
  mount1971: {
    citation: 'L. E. Mount and others, Animal Production 13:561, 1971: water per feed by temperature.',
  },
  extensionWater: {
    citation: 'swine.extension.org, water needs by class.',
  },
  little2023: {
    citation:
      'Little and others, J Swine Health Prod 31(1):20, 2023: 60 to 117 mL of water a kg a day, drunk and spilled.',
  },
  saltPoisoning: {
    citation: 'J Swine Health Prod 31(6):295, 2023; Iowa State University vetmed: salt poisoning.',
  },
  pigHeat: {
    citation:
      'R. Myer and R. Bucklin, University of Florida IFAS; Michigan State University Extension: finishers and sows suffer from 68–70 °F on; over 80 °F for 2 to 4 days losses are substantial.',
  },
  petherickBaxter1981: {
    citation:
      'J. C. Petherick and S. H. Baxter, 1981, quoted in Pastorelli and others, Livestock Science 105:260, 2006.',
  },
  bmelLivestockUnit: {
    citation: 'German ministry of agriculture, BMEL-Statistik: 500 kg of live mass are one livestock unit.',
    url: 'bmel-statistik.de',
  },
  stockDensityTerm: {
    citation:
      'University of Missouri and Oklahoma State extension, quoted in Ozarks Farm & Neighbor, 3 July 2017.',
  },
  nrcsManureUnit: {
    citation: 'USDA-NRCS, manure nutrient content table, archived 2009.',
  },
  awmfh: {
    citation:
      'USDA-NRCS, Agricultural Waste Management Field Handbook, chapter 4, Table 4-10, 2008, after ASAE D384.2, 2005.',
  },
  ukNitrates2008: {
    citation:
      'UK Statutory Instrument 2008/2349: nitrogen a pig a day 14.2 g at 13–31 kg, 24 g at 31–66 kg, 33 g from 66 kg; 12.1 g of P2O5 at 31–66 kg.',
  },
  koreaPhosphorus2024: {
    citation:
      '"Estimation of annual phosphorus excretion from pigs in Korea", J Anim Sci Technol, 2024 (abstract): 1.94 kg of P a year from market pigs, 44.1 kg on average.',
    url: 'ejast.org/archive/view_article?pid=jast-2024-e42',
  },
  pennState: {
    citation: 'Penn State Extension, "Four Steps to Rotational Grazing", step 3.',
    url: 'forages.psu.edu/topics/pastures/management/step3.html',
  },
  pennStateTable: {
    citation: 'Penn State Agronomy Guide, Table 1.8-9.',
    url: 'agguide.agronomy.psu.edu/cm/sec8/table1-8-9.cfm',
  },
  cornellWorksheet: {
    citation: 'Cornell University, "Prescribed grazing" worksheet, appendix 1.',
    url: 'css.cornell.edu/forage/pasture/appen1.html',
  },
  groundCover2020: {
    citation: 'S. Pietrosemoli, J. T. Green and M. J. Villamide, Animals 10:1046, 2020.',
  },
  katakam2016: {
    citation:
      'K. K. Katakam and others, Parasites & Vectors 9:80, 2016: most roundworm eggs die quickly; quotes from others that some live in soil up to at least nine years.',
  },
  defraPigCode: {
    citation:
      'Defra (UK), Code of Recommendations for the Welfare of Livestock: Pigs, PB7950, 2003 (in England replaced by the code of 2020).',
  },
} as const satisfies Record<string, { citation: string; url?: string }>;

export type SourceId = keyof typeof SOURCES;

/** How sure a figure is. Shown wherever the figure's source is shown. */
export type Certainty =
  | 'definition'
  | 'published'
  | 'published, second hand'
  | 'from memory'
  | 'common practice, no source'
  | 'judgement';

/** Cautions of the sidebar's tasks that no function carries. */
export const TASK_CAUTIONS: readonly {
  readonly says: string;
  readonly source: string;
  readonly certainty: Certainty;
}[] = [
  {
    says: 'clear of power lines: 3 m up to 1 kV, 4 m up to 33 kV, 8 m above; live wire 15 cm off barbed wire',
    source: 'iecFenceAnnex',
    certainty: 'published, second hand',
  },
  {
    says: 'a second, fixed fence against swine fever is law: France',
    source: 'order of 16 October 2018: two fences 25 cm apart or more, the outer one 1.3 m high',
    certainty: 'published, second hand',
  },
  {
    says: 'the same: Austria',
    source:
      'Schweinegesundheitskommission, 26 July 2017, on the order BGBl. II 2016/406: outer fence 1.5 m high',
    certainty: 'published',
  },
  {
    says: 'the same, with permit and sign: Germany',
    source: 'Schweinehaltungshygieneverordnung, annex 4',
    certainty: 'published',
  },
  { says: 'advised, 2 to 3 m between: Switzerland', source: 'fibl2019', certainty: 'published' },
];

/** What was looked for, the last time in November 2026: what came of it, and what did not. */
export const LOOKED_FOR: readonly {
  readonly what: string;
  readonly found: readonly { readonly says: string; readonly certainty: Certainty }[];
  readonly missing: string;
}[] = [
  {
    what: 'An official voltage for pigs',
    found: [
      {
        says: 'all stock, Germany: law asks for 2,000 V at every point of the fence at any time (G. Herkert, Naturschutz und Landschaftsplanung, 14 April 2025)',
        certainty: 'published',
      },
      {
        says: 'wild boar kept out of crops: three strands, over 4,000 V at every point (Agridea, in Schweizer Bauer)',
        certainty: 'published, second hand',
      },
    ],
    missing: 'a level for domestic pigs alone; levels for pigs in training are from memory',
  },
  {
    what: 'How long pigs take to learn the wire',
    found: [
      {
        says: 'weaners: one wire indoors first, then watch the first hour outside (The Country Smallholder)',
        certainty: 'published',
      },
      { says: 'cattle: a day in a training yard was enough (a trial, abstract)', certainty: 'published' },
    ],
    missing: 'any trial with pigs: the days are common practice, no source',
  },
  {
    what: 'Leak of growth to earth, in ohms',
    found: [
      {
        says: 'growth, dirt and broken insulators make fences ineffective, in wet weather most (L. H. Weston, Lincoln, 1968, abstract)',
        certainty: 'published',
      },
    ],
    missing: 'any figure: the start value is an illustration',
  },
  {
    what: 'Growth of pasture, month by month over a year',
    found: [
      {
        says: 'Katanning, Western Australia, all months (Department of Primary Industries)',
        certainty: 'published',
      },
      { says: 'Northern Ireland, April to June 2021 (GrassCheck)', certainty: 'published' },
    ],
    missing: 'rates for the reader’s own ground, which no table gives',
  },
  {
    what: 'How much load of pigs ground bears',
    found: [
      {
        says: 'bermudagrass, 14 weeks: cover held best at 37 finishing pigs a hectare, of 37 to 148 (Pietrosemoli and others, Animals 10:1666, 2020)',
        certainty: 'published',
      },
      {
        says: 'bermudagrass in rotation: 10 to 15 sows or gilts a hectare (Pietrosemoli and others, Animals 10:1046, 2020)',
        certainty: 'published',
      },
      {
        says: 'tall fescue, 12 weeks at 47 finishing pigs a hectare: rotation and strips changed cover and promise more than one paddock (Pietrosemoli and others, Animals 2020)',
        certainty: 'published',
      },
    ],
    missing: 'a limit in liveweight-days for one stay: it comes from the grower’s own records (GROUND_LIMIT)',
  },
  {
    what: 'NRC 2012, Table 16-1, and ASAE D384.2, swine rows',
    found: [],
    missing: 'a page that shows them: gains by weight and nutrients dropped stay from memory',
  },
];
