/** The bibliography: every source that a figure rests on, by id. */
export const SOURCES = {
  geometry: { citation: 'Plane geometry; nothing to look up.' },
  contract: { citation: 'Definition of the term, as used in this sheet.' },
  gerrishFencing: {
    citation:
      'J. Gerrish, quoted in "Common fencing mistakes", Beef Magazine, about 2008: 1 joule of output per mile of fence regardless of strands; 3 ft of ground rod per joule; 6 J takes three 6 ft rods.',
    url: 'beefmagazine.com/pasture-range/grazing-programs/0301-common-fencing-mistakes',
  },
  nrcsVirginia382: {
    citation:
      'USDA-NRCS Virginia, Conservation Practice Job Sheet 382(c), June 2009: at least 3 ft of ground rod per joule.',
  },
  pennState: {
    citation:
      'Penn State Extension, "Four Steps to Rotational Grazing", step 3: paddocks = rest / stay + 1, rounded up.',
    url: 'forages.psu.edu/topics/pastures/management/step3.html',
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
      'S. A. Edwards, Proceedings of the Nutrition Society 62:257, 2003: outdoor pigs need about 15 % more energy.',
  },
  mount1971: {
    citation: 'L. E. Mount and others, Animal Production 13:561, 1971: water per feed by temperature.',
  },
} as const satisfies Record<string, { citation: string; url?: string }>;

export type SourceId = keyof typeof SOURCES;
