/** Builds every block that there is in one workbook, as the sidebar's panels do: what they read, they read from the sheet. */
import { date, number, text } from '../../shared/block/cells';
import { MAP_BLOCK } from '../../shared/block/own-words';
import { cutBlock } from '../../shared/block/read-block';
import type { BlockInfo, WriteBlock, WriteDone } from '../../shared/contract';
import type { PaddockList } from '../../shared/lists/model';
import { pictureBlock } from '../../shared/table/picture-block';
import { readRotation } from '../../shared/table/read-rotation';
import { BITE_BLOCK, biteBlock } from '../../shared/tasks/bite/bite-block';
import { BITE_SETTINGS } from '../../shared/tasks/bite/bite-settings';
import { readingRow, WALK_BLOCK, WALK_SETTINGS, walkBlock } from '../../shared/tasks/bite/walk-block';
import { WIRES } from '../../shared/tasks/bite/wires';
import { BUDGET_BLOCK, budgetBlock } from '../../shared/tasks/budget/budget-block';
import { BUDGET_SETTINGS } from '../../shared/tasks/budget/budget-settings';
import { originOfRotation } from '../../shared/tasks/budget/origin-words';
import { rotationLinks } from '../../shared/tasks/budget/rotation-links';
import { rotationStays } from '../../shared/tasks/budget/rotation-stays';
import { composeMapBlock } from '../../shared/tasks/map/compose-map-block';
import { guessRole } from '../../shared/tasks/map/guess-role';
import { mapFromGeojson } from '../../shared/tasks/map/map-from-geojson';
import { measureMap } from '../../shared/tasks/map/measure-map';
import { COMPARISON_SETTINGS } from '../../shared/tasks/materials/comparison-model';
import { laidPaddocks } from '../../shared/tasks/materials/laid-paddocks';
import { MATERIALS_BLOCK, materialsBlock } from '../../shared/tasks/materials/materials-block';
import { MATERIALS_SETTINGS } from '../../shared/tasks/materials/materials-settings';
import { NOTHING_TYPED } from '../../shared/tasks/materials/read-materials';
import { mergeBlock } from '../../shared/tasks/merge-block';
import { startSettings } from '../../shared/tasks/settings';
import { type BoundTable, boundTable } from '../../shared/tasks/today/bound-table';
import { TODAY_BLOCK } from '../../shared/tasks/today/tick-words';
import { todayBlock } from '../../shared/tasks/today/today-block';
import { composeLogBlock, LOG_BLOCK, LOG_SETTINGS } from '../../shared/tasks/training/log-block';
import { composePenBlock, PEN_BLOCK, PEN_SETTINGS } from '../../shared/tasks/training/pen-block';
import type { UnitSystem } from '../../shared/units/units';
import type { Workbook } from '../../src/preview/headless';
import type { Book } from '../../src/sidebar/parts/use-book';
import { SAMPLE_MAP } from '../tasks/map/sample-map';
import { asked, buildRotation, type Outcome, readBook, readLists, type Wish } from './rotation-task';

type Block = Pick<WriteBlock, 'cells' | 'styles' | 'rules' | 'widths'>;
export type Written = Extract<Outcome, { kind: 'written' }>;

const ORIGIN = { row: 1, column: 1 };
/** Squares that are half as long again as wide: what the panel starts with where only areas are known. Judgement. */
const SHAPE = 1.5;

/** Writes a block onto a new tab of its own. */
export function writeNew(workbook: Workbook, name: string, block: Block, tab: string): BlockInfo {
  const place: WriteBlock['place'] = { at: 'new-tab', tab };
  const { cells, styles, rules, widths } = mergeBlock(name, block);
  const request = { cells, styles, rules, widths, freezeRows: 0, name, place };
  return asked<WriteDone>(workbook, 'writeBlock', request).block;
}

/** The table first, then everything that is made from it or stands beside it. */
export function buildEveryBlock(workbook: Workbook, units: UnitSystem, wish: Wish = {}): Written {
  const outcome = buildRotation(workbook, { units, ...wish });
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  const day = outcome.rules.seasonStart;
  picture(workbook, outcome);
  writeNew(workbook, TODAY_BLOCK, todayBlock(rotationNow(readBook(workbook)), ORIGIN), 'Today');
  writeNew(workbook, MATERIALS_BLOCK, materials(workbook, units), 'Materials');
  writeNew(workbook, BITE_BLOCK, bite(units), 'Bite');
  const walks = [3, 11].flatMap((after) =>
    [6200, 4100 - 90 * after].map((volts, i) =>
      readingRow({ day: day + after, place: `=corner ${i}`, volts, found: '' }),
    ),
  );
  writeNew(workbook, WALK_BLOCK, walkBlock(walks, startSettings(WALK_SETTINGS, units), ORIGIN), 'Fence walk');
  writeNew(workbook, BUDGET_BLOCK, budget(workbook, units), 'Budget');
  writeNew(
    workbook,
    PEN_BLOCK,
    composePenBlock(startSettings(PEN_SETTINGS, units), [], units, ORIGIN),
    'Pen',
  );
  writeNew(workbook, LOG_BLOCK, log(day), 'Training log');
  writeNew(workbook, MAP_BLOCK, map(units), 'Map');
  return outcome;
}

function picture(workbook: Workbook, { problem, plan, rules, units }: Written): void {
  const settings = { rules, unitSystem: units, temperatureC: 20, outdoorFactor: 1.15, lists: {} };
  const corner = { tab: 'Picture', row: 1, column: 1 };
  writeNew(workbook, 'SOUNDER_PICTURE', pictureBlock({ problem, plan, settings, corner }), 'Picture');
}

/** The rotation table as today's page is bound to it. */
export function rotationNow({ overview, tabs }: Book): BoundTable {
  const info = overview.blocks.find(({ name }) => name === 'SOUNDER_ROTATION')!;
  const table = boundTable(cutBlock(tabs.find(({ name }) => name === info.tab)!, info));
  if ('problem' in table) throw new Error(table.problem);
  return table;
}

function materials(workbook: Workbook, units: UnitSystem): Block {
  const book = readBook(workbook);
  const { chosen, paddocks } = readLists(book, units);
  const list = chosen.paddocks as unknown as PaddockList;
  const tab = book.tabs.find(({ name }) => name === list.tab)!;
  const { paddocks: laid, problems } = laidPaddocks(
    tab,
    list,
    paddocks,
    { system: units, comma: false },
    SHAPE,
  );
  if (problems.length > 0) throw new Error(JSON.stringify(problems));
  return materialsBlock(
    {
      layout: { kind: 'list', touching: 'lengths', paddocks: laid },
      atATime: { kind: 'all' },
      units,
      settings: startSettings(MATERIALS_SETTINGS, units),
      comparison: startSettings(COMPARISON_SETTINGS, units),
      list: { tab, list },
    },
    NOTHING_TYPED,
    ORIGIN,
  );
}

function bite(units: UnitSystem): Block {
  const lines = [
    { name: 'Lane', meters: 400, liveWires: 2, wire: WIRES[0]!.name },
    { name: '=Hill', meters: 5500, liveWires: 1, wire: WIRES[1]!.name },
  ];
  return biteBlock({ lines, wires: WIRES, units, settings: startSettings(BITE_SETTINGS, units) }, ORIGIN);
}

function budget(workbook: Workbook, units: UnitSystem): Block {
  const book = readBook(workbook);
  const info = book.overview.blocks.find(({ name }) => name === 'SOUNDER_ROTATION')!;
  const tab = book.tabs.find(({ name }) => name === info.tab)!;
  const { stays } = rotationStays(readRotation(tab, info).rows, info.tab);
  const rotation = rotationLinks(cutBlock(tab, info));
  const settings = startSettings(BUDGET_SETTINGS, units);
  const plan = {
    stays,
    units,
    settings,
    source: rotation ? { rotation } : {},
    origin: originOfRotation(info.tab),
    leftOut: [],
  };
  return budgetBlock(plan, new Map(), ORIGIN);
}

/** One batch that is ready, one that is not, and a row that has lost its name. */
function log(day: number): Block {
  const trained = (name: string, group: string, began: number) =>
    new Map([
      ['Pig or batch', text(name)],
      ['Group', text(group)],
      ['Head', number(9)],
      ['In the pen on', date(began)],
      ['Saw the wire on', date(began)],
      ['Backed off on', date(began + 1)],
      ['Passed check on', date(began + 2)],
      ['Observer', text('Ada')],
    ]);
  const began = new Map([
    ['Pig or batch', text('=Late')],
    ['Group', text('=Blacks')],
    ['In the pen on', date(day - 3)],
  ]);
  const nameless = new Map([...trained('', 'Greens', day - 20)].slice(1));
  return composeLogBlock(
    startSettings(LOG_SETTINGS, 'US'),
    [trained('Sows', 'Reds', day - 20), began, nameless],
    [],
    ORIGIN,
  );
}

function map(units: UnitSystem): Block {
  const shapes = mapFromGeojson(SAMPLE_MAP).shapes.map((shape) => ({ ...shape, role: guessRole(shape) }));
  const settings = { postSpacing: units === 'US' ? 25 : 8 };
  return composeMapBlock({
    map: measureMap(shapes, 8, 3),
    settings,
    units,
    origin: ORIGIN,
  });
}
