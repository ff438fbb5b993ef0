/** The budget of the rotation table's moves and the one of the lists alone, rebuilt as their panel does. */
import type { BlockContent } from '../../shared/block/read-block';
import { readRotation } from '../../shared/table/read-rotation';
import { BUDGET_BLOCK, type BudgetPlan, budgetBlock } from '../../shared/tasks/budget/budget-block';
import { BUDGET_SETTINGS } from '../../shared/tasks/budget/budget-settings';
import { originOfLists, originOfRotation } from '../../shared/tasks/budget/origin-words';
import { plainStays } from '../../shared/tasks/budget/plain-stays';
import { readBudget } from '../../shared/tasks/budget/read-budget';
import { rotationLinks } from '../../shared/tasks/budget/rotation-links';
import { rotationStays } from '../../shared/tasks/budget/rotation-stays';
import { workableStays } from '../../shared/tasks/budget/workable-stays';
import { insideSettings, readUnits, startSettings } from '../../shared/tasks/settings';
import type { UnitSystem } from '../../shared/units/units';
import type { Book } from '../../src/sidebar/parts/use-book';
import { growersOwn, sourceOf } from './list-source';
import { readLists } from './rotation-task';
import { composed, type TypedTask } from './typed-cells';
import { contentOf, over, reading } from './typed-over';
import { settingsOnPage, withOwnInputs, withOwnSettings } from './typed-settings';

type Stays = Pick<BudgetPlan, 'stays' | 'source' | 'origin'>;
export const LISTS_BUDGET = 'SOUNDER_LISTS_BUDGET';

export function budgetTask(book: Book): TypedTask {
  return taskOf('Budget', contentOf(book, BUDGET_BLOCK), rotationUnits(book), staysOfRotation(book));
}

export function listsBudgetTask(book: Book, units: UnitSystem): TypedTask {
  return taskOf('Budget of the lists', contentOf(book, LISTS_BUDGET), units, staysOfLists(book, units));
}

/** The budget of the lists as it is written first. */
export function listsBudget(book: Book, units: UnitSystem) {
  const settings = startSettings(BUDGET_SETTINGS, units);
  const plan = { ...staysOfLists(book, units), settings, units, leftOut: [] };
  return budgetBlock(plan, new Map(), { row: 1, column: 1 });
}

function taskOf(name: string, content: BlockContent, ownUnits: UnitSystem, stays: Stays): TypedTask {
  const task: TypedTask = {
    name,
    content: withOwnSettings(content, BUDGET_SETTINGS, readUnits(content) ?? ownUnits),
    rebuild: (typed) => {
      const changed = reading(typed);
      const read = readBudget(changed);
      const units = readUnits(changed) ?? ownUnits;
      const { values, problems } = settingsOnPage(BUDGET_SETTINGS, read.settings, units);
      if (problems.length > 0) return { refused: problems };
      const workable = workableStays(stays.stays, insideSettings(BUDGET_SETTINGS, values, units), units);
      const plan = { ...stays, stays: workable.stays, units, settings: values, leftOut: workable.leftOut };
      return over(typed, [], () => budgetBlock(plan, read.notes, changed.info));
    },
  };
  return { ...task, content: withOwnInputs(task.content, composed(task, task.content)) };
}

function rotationUnits(book: Book): UnitSystem {
  return rotationOf(book).old.settings!.unitSystem;
}

function rotationOf(book: Book) {
  const block = contentOf(book, 'SOUNDER_ROTATION');
  return { block, old: readRotation(block) };
}

function staysOfRotation(book: Book): Stays {
  const { block, old } = rotationOf(book);
  const { stays } = rotationStays(old.rows, block.info.tab);
  return { stays, source: { rotation: rotationLinks(block)! }, origin: originOfRotation(block.info.tab) };
}

/** From the first weighing on, for two weeks. */
function staysOfLists(book: Book, units: UnitSystem): Stays {
  const { paddocks, groups, chosen } = readLists(growersOwn(book), units);
  const start = Math.min(...groups.map(({ weighedOn }) => weighedOn));
  const stays = plainStays(paddocks, groups, { start, end: start + 14, daysOn: 7 });
  return { stays, source: sourceOf(book, chosen), origin: originOfLists('7') };
}
