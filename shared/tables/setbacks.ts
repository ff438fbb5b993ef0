/** Published distances between pigs or their manure and water: none of them is the reader's own law. */
import type { Certainty } from '../sources';

const FOOT_METERS = 0.3048;

export interface Setback {
  readonly to: 'water' | 'well';
  readonly meters: number;
  /** Where it holds and for what. */
  readonly holds: string;
  readonly certainty: Certainty;
}

export const SETBACKS: readonly Setback[] = [
  {
    to: 'water',
    meters: 100 * FOOT_METERS,
    holds:
      'North Carolina guideline of 5 November 1997: vegetated and fenced strip between a swine dry lot and a stream, pond or ditch downhill (upslope 10 ft)',
    certainty: 'published',
  },
  {
    to: 'water',
    meters: 10,
    holds: 'England, Farming Rules for Water: livestock feeders from fresh or coastal water',
    certainty: 'published, second hand',
  },
  {
    to: 'well',
    meters: 150 * FOOT_METERS,
    holds: 'Colorado CDPHE: manure facilities from supply wells, and downhill of them',
    certainty: 'published',
  },
  {
    to: 'well',
    meters: 50,
    holds: 'England, Farming Rules for Water: livestock feeders from a spring, well or borehole',
    certainty: 'published, second hand',
  },
];
