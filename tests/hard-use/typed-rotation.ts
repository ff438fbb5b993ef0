/** The rotation table, rebuilt as its panel does: with the plan that is there as long as the problem is the same. */

import { ROTATION_NAME } from '../../shared/block/own-words';
import type { BlockContent } from '../../shared/block/read-block';
import { dayFromIso } from '../../shared/core/calendar/day';
import { startUnits } from '../../shared/lists/start-units';
import { planRotation } from '../../shared/plan/plan-rotation';
import { describeChanges } from '../../shared/table/describe-changes';
import { readRotation } from '../../shared/table/read-rotation';
import { rememberedRotation } from '../../shared/table/remembered-rotation';
import { type OldTable, oldTable } from '../../shared/tasks/rotation/old-table';
import { readRules } from '../../shared/tasks/rotation/read-rules';
import { rulesFormOf, startingRules } from '../../shared/tasks/rotation/rules-form';
import { seasonOf } from '../../shared/tasks/rotation/season';
import { tableInput } from '../../shared/tasks/rotation/table-input';
import { mergedRotation } from '../../src/sidebar/panels/rotation/rotation-request';
import type { Book } from '../../src/sidebar/parts/use-book';
import { readLists } from './rotation-task';
import { contentOf, withoutOthers } from './task-in-memory';
import type { Composed, Rebuilt, TypedTask } from './typed-cells';

/** `written`: the table as it was built, where it is not built anew the same. */
export function rotationTask(name: string, book: Book, written?: Composed): TypedTask {
  const before = oldTable(book)!;
  const lists = readLists(withoutOthers(book, ROTATION_NAME), before.rotation.settings!.unitSystem);
  const plans = new Map<string, ReturnType<typeof planRotation>>();
  const today = dayFromIso(book.overview.today)!;
  const ownUnits = startUnits(book);

  function rebuild(changed: BlockContent): Rebuilt {
    const block = rememberedRotation(changed);
    const rotation = readRotation(block);
    const old: OldTable = { ...before, block, rotation };
    const units = rotation.settings?.unitSystem ?? ownUnits;
    const given = rotation.settings?.rules;
    const form = given
      ? rulesFormOf(given, units, false)
      : startingRules(lists.paddocks, lists.groups, today);
    const read = readRules(form, units, false);
    const season = seasonOf({ lists, rules: read.rules, old, today, countPlannedAsDone: false });
    if ('missing' in season) {
      const sentences = season.problems.map(({ sentence }) => sentence);
      return { refused: [season.missing, ...sentences, ...Object.values(read.problems)] };
    }
    const { problem, rules, rebuild: again } = season;
    const key = JSON.stringify(problem);
    const plan = plans.get(key) ?? planRotation(problem);
    plans.set(key, plan);
    if ('reason' in plan) return { refused: [plan.reason] };
    const made = { problem, plan, words: undefined };
    const input = tableInput({ book, lists, made, rules, unitSystem: units, old, rebuild: again });
    const { cells, styles, kept } = mergedRotation(input, old);
    const told = again
      ? [...again.notes, ...describeChanges(again, plan), ...kept.inPlace, ...kept.below]
      : [];
    return { cells, styles, told };
  }

  return {
    name,
    content: contentOf(book, ROTATION_NAME),
    rebuild: (changed) => refusedOr(() => rebuild(changed)),
    placeOf: placesIn(contentOf(book, ROTATION_NAME)),
    ...(written && { written }),
  };
}

function refusedOr(build: () => Rebuilt): Rebuilt {
  try {
    return build();
  } catch (error) {
    return { refused: [error instanceof Error ? error.message : String(error)] };
  }
}

/** "past move, Days", "setting Rest": rows shift when the table changes, their kinds do not. */
function placesIn({ values }: BlockContent): (row: number, column: number) => string {
  const head = values.findIndex((row) => row.includes('Moved in'));
  const heading = (column: number): string => String(values[head]![column]);
  const movedIn = values[head]!.indexOf('Moved in');
  const end = values.findIndex((row, r) => r > head + 1 && row[0] === '');
  return (r, c) => {
    if (r < head) return `line ${r + 1} above, column ${c + 1}`;
    if (r === head) return `heading ${heading(c)}`;
    if (r === head + 1) return `row under the headings, ${heading(c)}`;
    if (r < end) return `${values[r]![movedIn] === '' ? 'move' : 'past move'}, ${heading(c)}`;
    if (r === end) return `row below the moves, ${heading(c)}`;
    return `${c === 0 ? 'label' : c === 1 ? 'value' : 'beside'} of setting ${values[r]![0]}`;
  };
}
