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
      'Extension question and answer "What type of fence will I need to pasture hogs?" (a reprint, believed to be eXtension): two wires at 10 and 18 in for sows and growing and finishing pigs; with nursing pigs the lower wire at about 6 in.',
  },
  countrySmallholder: {
    citation: 'The Country Smallholder (magazine): one wire about 8 in (20 cm) high to train weaners.',
  },
  petherick1983: {
    citation: 'J. C. Petherick, Animal Production, 1983: body measures grow with the cube root of weight.',
  },
  gerrishFencing: {
    citation:
      'J. Gerrish, quoted in "Common fencing mistakes", Beef Magazine, about 2008: 1 joule of output per mile of fence regardless of strands; 3 ft of ground rod per joule; 6 J takes three 6 ft rods.',
    url: 'beefmagazine.com/pasture-range/grazing-programs/0301-common-fencing-mistakes',
  },
  nrcsVirginia382: {
    citation:
      'USDA-NRCS Virginia, Conservation Practice Job Sheet 382(c), June 2009: at least 3 ft of ground rod per joule; rods 10 ft apart; one energizer per fence.',
  },
  threeRods: {
    citation:
      'die grüne, 2023: three rods of 1 m, 3 m apart; F. Launay, Institut de l’Élevage, in La France Agricole: at least three rods of 1 m in parallel.',
  },
  iecFenceAnnex: {
    citation:
      'IEC 60335-2-76, installation annex for electric animal fences, as printed in two makers’ leaflets: head, neck and torso clear; earth 10 m from supply and telecom earth; one fence never on two energizers or two circuits; fences of separate energizers 2.5 m apart; barbed wire never live; 3 m from power lines to 1 kV, 4 m to 33 kV, 8 m above.',
  },
  resistivityTables: {
    citation: 'Tables of electrical resistivity, The Engineering ToolBox and an encyclopedia table.',
    url: 'engineeringtoolbox.com',
  },
  lineTheory: { citation: 'Textbook theory of the uniform line with leakage, steady state.' },
  dalton2016: {
    citation: 'C. Dalton, power-fence glossary, 2016: 500 Ω for a body with wet hands and feet.',
    url: 'woolshed1.blogspot.com',
  },
  nrc2012: {
    citation:
      'National Research Council, Nutrient Requirements of Swine, 11th edition, 2012: intake equation and Table 16-1.',
  },
  nrc2012Table: {
    citation:
      'National Research Council, Nutrient Requirements of Swine, 11th edition, 2012, Table 16-1: mean daily gain by weight band.',
  },
  edwards2003: {
    citation:
      'S. A. Edwards, Proceedings of the Nutrition Society 62:257, 2003: outdoor pigs need about 15 % more energy; growing pigs get less than 5 % of it by grazing.',
  },
  mount1971: {
    citation: 'L. E. Mount and others, Animal Production 13:561, 1971: water per feed by temperature.',
  },
  extensionWater: {
    citation:
      'swine.extension.org, water needs by class: starter 13–45 lb, grower 45–130 lb, finisher 130–250 lb.',
  },
  little2023: {
    citation:
      'Little and others, Journal of Swine Health and Production 31(1):20, 2023: growing pigs use 60 to 117 mL of water a kg of weight a day, drunk and spilled.',
  },
  saltPoisoning: {
    citation:
      'Journal of Swine Health and Production 31(6):295, 2023, and Iowa State University veterinary diagnostics: salt poisoning after more than 24 h without water; give it back slowly over hours.',
  },
  pigHeat: {
    citation:
      'R. Myer and R. Bucklin, University of Florida IFAS; Michigan State University Extension: finishers and sows begin to suffer near 68–70 °F (20–21 °C); over 80 °F for 2 to 4 days losses are substantial.',
  },
  petherickBaxter1981: {
    citation:
      'J. C. Petherick and S. H. Baxter, 1981, quoted in Pastorelli and others, Livestock Science 105:260, 2006: area = 0.047 × W^0.67 m² for a pig lying flat.',
  },
  stockDensityTerm: {
    citation:
      'University of Missouri and Oklahoma State extension, quoted in Ozarks Farm & Neighbor, 3 July 2017: stock density is the animals on the ground grazed right now.',
  },
  nrcsManureUnit: {
    citation:
      'USDA-NRCS, manure nutrient content table, archived 2009: an animal unit is 1000 lb of liveweight.',
  },
  awmfh: {
    citation:
      'USDA-NRCS, Agricultural Waste Management Field Handbook, chapter 4, Table 4-10, 2008, after ASAE D384.2, 2005: nutrients as excreted, grow-finish pigs.',
  },
  ukNitrates2008: {
    citation:
      'UK Statutory Instrument 2008/2349: nitrogen a pig a day 14.2 g at 13–31 kg, 24 g at 31–66 kg, 33 g from 66 kg.',
  },
  pennState: {
    citation:
      'Penn State Extension, "Four Steps to Rotational Grazing", step 3: paddocks = rest / stay + 1, rounded up.',
    url: 'forages.psu.edu/topics/pastures/management/step3.html',
  },
  pennStateTable: {
    citation: 'Penn State Agronomy Guide, Table 1.8-9: acres of pasture per animal unit.',
    url: 'agguide.agronomy.psu.edu/cm/sec8/table1-8-9.cfm',
  },
  cornellWorksheet: {
    citation:
      'Cornell University, "Prescribed grazing" worksheet, appendix 1: paddock size from demand and supply.',
    url: 'css.cornell.edu/forage/pasture/appen1.html',
  },
  groundCover2020: {
    citation:
      'S. Pietrosemoli, J. T. Green and M. J. Villamide, Animals 10:1046, 2020: more than 75 % ground cover as best practice on pig pasture.',
  },
  katakam2016: {
    citation:
      'K. K. Katakam and others, Parasites & Vectors 9:80, 2016: most roundworm eggs die quickly; quotes from others that some live in soil up to at least nine years.',
  },
  defraPigCode: {
    citation:
      'Defra (UK), Code of Recommendations for the Welfare of Livestock: Pigs, PB7950: train pigs in a paddock with secure fencing outside the electric wire; shade in summer, wallows for breeding stock.',
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
