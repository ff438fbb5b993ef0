/** Arguments that several functions share, so that the same word means the same everywhere. */
import { MOST_GAIN_KG_PER_DAY } from '../tables/growing-weights';
import type { BooleanParam, CornersParam, NumberParam, UnitsParam } from './define';

/** The `units` argument, the same in every function that has it. */
export const UNITS_PARAM = {
  kind: 'units',
  name: 'units',
  optional: true,
  help: '"US" (default) or "metric".',
} as const satisfies UnitsParam;

export const HEAD_PARAM = {
  kind: 'number',
  name: 'head',
  unit: 'pigs',
  help: 'How many pigs.',
  above: 0,
} as const satisfies NumberParam;

/** Liveweight of one pig, in lb or kg. */
export const WEIGHT_PARAM = {
  kind: 'number',
  name: 'weight',
  quantity: 'mass',
  help: 'Weight of one pig.',
  above: 0,
} as const satisfies NumberParam;

export const START_WEIGHT_PARAM = {
  kind: 'number',
  name: 'start_weight',
  quantity: 'mass',
  help: 'Weight of one pig on the first day.',
  above: 0,
} as const satisfies NumberParam;

export const DAILY_GAIN_PARAM = {
  kind: 'number',
  name: 'daily_gain',
  quantity: 'massPerDay',
  help: 'Gain a day, 4.4 lb (2 kg) at most. Left out: the growth table, from 11 to 297 lb (5 to 135 kg) only.',
  optional: true,
  min: 0,
  max: MOST_GAIN_KG_PER_DAY,
} as const satisfies NumberParam;

export const DAYS_PARAM = {
  kind: 'number',
  name: 'days',
  unit: 'days',
  help: 'Length of the stay.',
  min: 0,
} as const satisfies NumberParam;

export const PADDOCKS_PARAM = {
  kind: 'number',
  name: 'paddocks',
  unit: 'paddocks',
  help: 'How many paddocks the groups share.',
  min: 1,
  whole: true,
} as const satisfies NumberParam;

export const DAYS_ON_PARAM = {
  kind: 'number',
  name: 'days_on',
  unit: 'days',
  help: 'Days that a group stays in a paddock.',
  above: 0,
} as const satisfies NumberParam;

export const REST_DAYS_PARAM = {
  kind: 'number',
  name: 'rest_days',
  unit: 'days',
  help: 'Days that a paddock shall rest.',
  above: 0,
} as const satisfies NumberParam;

export const GROUPS_PARAM = {
  kind: 'number',
  name: 'groups',
  unit: 'groups',
  help: 'Groups that take turns in these paddocks; 1 where left out.',
  optional: true,
  default: 1,
  min: 1,
  whole: true,
} as const satisfies NumberParam;

/** A side of a rectangle; the answer comes in the same unit. */
export const WIDTH_PARAM = {
  kind: 'number',
  name: 'width',
  help: 'One side, in any unit of length.',
  unit: 'any length',
  above: 0,
} as const satisfies NumberParam;

export const LENGTH_PARAM = {
  kind: 'number',
  name: 'length',
  help: 'The other side, in the same unit.',
  unit: 'any length',
  above: 0,
} as const satisfies NumberParam;

export const SPACING_PARAM = {
  kind: 'number',
  name: 'spacing',
  help: 'Widest gap between posts, in the same unit.',
  unit: 'any length',
  above: 0,
} as const satisfies NumberParam;

export const CLOSED_PARAM = {
  kind: 'boolean',
  name: 'closed',
  help: 'TRUE (the default): the line comes back to where it began. FALSE: an open run with a post at both ends.',
  optional: true,
  default: true,
} as const satisfies BooleanParam;

export const CORNERS_PARAM = {
  kind: 'corners',
  name: 'corners',
  help: 'Corners in order round the outside, two columns: latitude and longitude in decimal degrees.',
} as const satisfies CornersParam;
