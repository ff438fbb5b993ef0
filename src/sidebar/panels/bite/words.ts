/** The sentences of the page of the bite at the far end and of the fence walk. */
// Enough or not
export const TESTER_HELPS = 'What helps most: a fence tester at the far end.';
export const helpsMost = (what: string, volts: string): string =>
  `What helps most: ${what}. A pig at the far end, in weeds, then gets ${volts} V.`;
export const EXAMPLES = 'Examples until you type yours:';
export const LEVELS_TITLE = 'Levels that are named, and how sure they are';
export const NO_OFFICIAL_LEVEL =
  'No official level for pigs was found. “On the fence” and “delivered to the animal” are different things.';

// What is asked
export const MEASURED_BETTER =
  'Measured volts are better: labels count joules in more than one way. Reckoned on the low side (judgement).';
export const GROWTH_NOTE = 'What growth takes is an illustration: no published figure was found. Measure.';
export const VOLTS_500 = 'Its volts with 500 Ω on it, if the label says';
export const badVolts = (volts: number, typed: string): string =>
  `Must be a number above 0 that goes with ${volts} V without load, got ${typed}. Measure the volts.`;
export const ALONG_FENCE = 'Along the fence from the energizer to the far end.';
export const SHARED_CURRENT = 'Tied together at both ends they share the current.';
export const BY_ITS_LOOK =
  'By its look: cut an end and count the metal threads; grey ones are stainless steel, red ones copper. What each wire is made of stands in the sheet: change it there to what its label says.';

// The fence walk
export const TREND = 'Lowest volts of each walk over time. The sentence below says the same in words.';
export const trendDays = (first: string, last: string): string =>
  `${first} to ${last}; dashed: your level. Larger points are below it.`;
export const NOT_COUNTED = 'Rows that cannot be counted (they are kept):';
export const WHERE_EXAMPLE = 'For example “far corner, Lane 3”.';
