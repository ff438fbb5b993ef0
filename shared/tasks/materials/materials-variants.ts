import { MEMORY_LABELS } from '../../lists/list-memory';
import type { ComposedBlock } from '../composed-block';
import type { Origin } from '../draft-block';
import { startSettings } from '../settings';
import { COMPARISON_SETTINGS } from './comparison-model';
import type { Layout } from './layout';
import { TOUCHING_WORDS } from './list-rows';
import type { AtATime } from './material-needs';
import { type MaterialsPlan, materialsBlock } from './materials-block';
import { MATERIALS_SETTINGS } from './materials-settings';
import { NOTHING_TYPED } from './read-materials';

/** Small layouts that between them have every formula that a layout can have. */
const LAYOUTS: readonly Layout[] = [
  { kind: 'grid', rows: 2, columns: 3, widthMeters: 10, lengthMeters: 10 },
  {
    kind: 'list',
    touching: 'lengths',
    paddocks: [
      { name: 'A', widthMeters: 10, lengthMeters: 10 },
      { name: 'B', widthMeters: 10, lengthMeters: 10 },
      { name: 'C', guessedFromSquareMeters: 100 },
      { name: 'D', fenceMeters: 40 },
    ],
  },
];
const AT_A_TIME: readonly AtATime[] = [{ kind: 'all' }, { kind: 'set', paddocks: 2 }];

/** Every word of ours that may stand in the block, in either unit system, whatever the farm. */
export function materialsWords(): ReadonlySet<string> {
  known ??= wordsOfAll();
  return known;
}

/** Worked out once: they hang on nothing. */
let known: ReadonlySet<string> | undefined;

function wordsOfAll(): ReadonlySet<string> {
  const blocks = (['US', 'metric'] as const).flatMap((units) => {
    const settings = startSettings(MATERIALS_SETTINGS, units);
    const comparison = startSettings(COMPARISON_SETTINGS, units);
    const plan = {
      layout: LAYOUTS[0] as Layout,
      atATime: { kind: 'all' },
      units,
      settings,
      comparison,
    } as const;
    return materialsVariants(plan, { row: 1, column: 1 });
  });
  const cells = blocks.flatMap((block) => block.cells.flat());
  const touching = Object.values(TOUCHING_WORDS);
  return new Set([
    '',
    MEMORY_LABELS.paddocks,
    ...touching,
    ...cells.flatMap((cell) => (cell.k === 't' ? [cell.v] : [])),
  ]);
}

/** Blocks of other layouts and of other sets: where the grower has changed over, their formulas stand in the old one. */
export function materialsVariants(plan: MaterialsPlan, origin: Origin): readonly ComposedBlock[] {
  return [plan.layout, ...LAYOUTS].flatMap((layout) =>
    AT_A_TIME.map((atATime) => materialsBlock({ ...plan, layout, atATime }, NOTHING_TYPED, origin)),
  );
}
