/** All cell functions, in the order in which they are listed to people. */
import type { AnyEntry } from './define';
import { ENERGIZER_JOULES } from './energizer/energizer-joules';
import { FENCE_VOLTAGE } from './energizer/fence-voltage';
import { GROUND_RODS } from './energizer/ground-rods';
import { WIRE_OHMS } from './energizer/wire-ohms';
import { BOUNDARY_AREA } from './fence/boundary-area';
import { BOUNDARY_LENGTH } from './fence/boundary-length';
import { BOUNDARY_POSTS } from './fence/boundary-posts';
import { FENCE_GRID } from './fence/fence-grid';
import { FENCE_LENGTH } from './fence/fence-length';
import { POST_COUNT } from './fence/post-count';
import { ROLL_COUNT } from './fence/roll-count';
import { SIDE_POSTS } from './fence/side-posts';
import { STRAND_HEIGHTS } from './fence/strand-heights';
import { ANIMAL_UNITS } from './pigs/animal-units';
import { DAYS_TO_WEIGHT } from './pigs/days-to-weight';
import { FEED_NEEDED } from './pigs/feed-needed';
import { NUTRIENT_LOAD } from './pigs/nutrient-load';
import { PIG_WEIGHT } from './pigs/pig-weight';
import { SHELTER_AREA } from './pigs/shelter-area';
import { STOCKING_DENSITY } from './pigs/stocking-density';
import { WATER_NEEDED } from './pigs/water-needed';
import { DAYS_ON } from './rotation/days-on';
import { GRAZING_AREA } from './rotation/grazing-area';
import { GROUND_LIMIT } from './rotation/ground-limit';
import { PADDOCKS_NEEDED } from './rotation/paddocks-needed';
import { REGROWTH_DAYS } from './rotation/regrowth-days';
import { REST_PERIOD } from './rotation/rest-period';
import { STAY_DAYS } from './rotation/stay-days';
import { TRAINING_PEN } from './training/training-pen';

export const CATALOGUE: readonly AnyEntry[] = [
  FENCE_LENGTH,
  FENCE_GRID,
  BOUNDARY_LENGTH,
  BOUNDARY_AREA,
  BOUNDARY_POSTS,
  POST_COUNT,
  SIDE_POSTS,
  ROLL_COUNT,
  STRAND_HEIGHTS,
  ENERGIZER_JOULES,
  GROUND_RODS,
  WIRE_OHMS,
  FENCE_VOLTAGE,
  PIG_WEIGHT,
  DAYS_TO_WEIGHT,
  FEED_NEEDED,
  WATER_NEEDED,
  SHELTER_AREA,
  STOCKING_DENSITY,
  ANIMAL_UNITS,
  NUTRIENT_LOAD,
  REST_PERIOD,
  PADDOCKS_NEEDED,
  DAYS_ON,
  STAY_DAYS,
  GROUND_LIMIT,
  REGROWTH_DAYS,
  GRAZING_AREA,
  TRAINING_PEN,
];
