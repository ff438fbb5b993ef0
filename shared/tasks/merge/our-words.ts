/**
 * Headings, labels and titles that the readers of our blocks look for. Where the grower typed over one of them, the
 * block's memory still says which it was.
 */

import { markOfStanding } from '../../block/memory';
import { CORNERS_TITLE } from '../../block/words';
import { MEMORY_LABELS } from '../../lists/list-memory';
import { COLUMNS, headingOf } from '../../table/columns';
import { LEVELS_TITLE, LINE_HEADINGS } from '../bite/bite-block';
import { BITE_SETTINGS } from '../bite/bite-settings';
import { WALK_HEADINGS, WALK_SETTINGS } from '../bite/walk-block';
import { WIRE_HEADINGS } from '../bite/wire-rows';
import { LOAD_HEADINGS, MONTH_HEADINGS, SEASON_TITLE } from '../budget/budget-block';
import { BUDGET_SETTINGS } from '../budget/budget-settings';
import { STAY_HEADINGS } from '../budget/stay-columns';
import { HERD_HEADINGS, HERD_WORKING } from '../herd/herd-block';
import { LOOK_OUT_TITLE } from '../look-out';
import { CORNER_HEADINGS, listHeadings, MAP_SETTINGS } from '../map/map-block';
import { COMPARISON_HEADINGS, COMPARISON_SETTINGS, FIXED_HEADINGS } from '../materials/comparison-model';
import { FIGURES_TITLE, HEIGHTS_LABEL } from '../materials/figure-rows';
import { ITEM_HEADINGS, ITEM_NAMES, TOTAL_LABEL } from '../materials/item-rows';
import { LAYOUT_TITLE } from '../materials/layout-formulas';
import { GRID_FENCE_LABEL, GRID_SETTINGS } from '../materials/layout-rows';
import { LIST_HEADINGS, TOUCHING_LABEL } from '../materials/list-rows';
import { AT_A_TIME_LABEL, KIND_LABEL } from '../materials/materials-block';
import { MATERIALS_SETTINGS } from '../materials/materials-settings';
import { UNITS_LABEL } from '../settings';
import { LOG_SETTINGS } from '../training/log-block';
import { LOG_HEADINGS } from '../training/log-headings';
import { PEN_HEADINGS, PEN_SETTINGS } from '../training/pen-block';

const SYSTEMS = ['US', 'metric'] as const;

const SETTINGS = [
  BITE_SETTINGS,
  WALK_SETTINGS,
  BUDGET_SETTINGS,
  MAP_SETTINGS,
  MATERIALS_SETTINGS,
  COMPARISON_SETTINGS,
  GRID_SETTINGS,
  LOG_SETTINGS,
  PEN_SETTINGS,
];

const WORDS: readonly string[] = [
  ...SETTINGS.flatMap((specs) => specs.map(({ label }) => label)),
  ...COLUMNS.flatMap((column) => SYSTEMS.map((system) => headingOf(column, system))),
  ...[LINE_HEADINGS, WALK_HEADINGS, WIRE_HEADINGS, MONTH_HEADINGS, LOAD_HEADINGS, STAY_HEADINGS].flat(),
  ...[CORNER_HEADINGS, COMPARISON_HEADINGS, FIXED_HEADINGS, ITEM_HEADINGS, LIST_HEADINGS].flat(),
  ...[LOG_HEADINGS, PEN_HEADINGS, HERD_HEADINGS, HERD_WORKING].flat(),
  ...SYSTEMS.flatMap((system) => Object.values(listHeadings(system))),
  CORNERS_TITLE,
  ...Object.values(ITEM_NAMES),
  ...Object.values(MEMORY_LABELS),
  ...[LEVELS_TITLE, SEASON_TITLE, FIGURES_TITLE, HEIGHTS_LABEL, LAYOUT_TITLE, GRID_FENCE_LABEL, TOTAL_LABEL],
  ...[
    TOUCHING_LABEL,
    AT_A_TIME_LABEL,
    KIND_LABEL,
    UNITS_LABEL,
    LOOK_OUT_TITLE,
    'Settings',
    'On the ground',
    'Compared with fixed fence',
  ],
];

/** By their marks. */
export const OUR_WORDS: ReadonlyMap<string, string> = new Map(
  WORDS.map((word) => [markOfStanding(word, ''), word]),
);
