/** The map table, rebuilt from itself as its panel does. */

import { MAP_BLOCK } from '../../shared/block/own-words';
import { startUnits } from '../../shared/lists/start-units';
import { composeMapBlock } from '../../shared/tasks/map/compose-map-block';
import { guessRole } from '../../shared/tasks/map/guess-role';
import { MAP_SETTINGS } from '../../shared/tasks/map/map-block';
import { keptInMap, mapFromBlock } from '../../shared/tasks/map/map-from-block';
import { measureMap } from '../../shared/tasks/map/measure-map';
import { insideSettings, readSettings, readUnits } from '../../shared/tasks/settings';
import type { Book } from '../../src/sidebar/parts/use-book';
import { composed, type TypedTask } from './typed-cells';
import { contentOf, over, reading, refusedOr } from './typed-over';
import { settingsOnPage, withOwnInputs, withOwnSettings } from './typed-settings';

/** Neighbours as the panel begins: 10 ft or 3 m, near enough. */
const TOLERANCE_METERS = 3;

export function mapTask(book: Book): TypedTask {
  const content = contentOf(book, MAP_BLOCK);
  const ownUnits = startUnits(book);
  const task: TypedTask = {
    name: 'Map',
    content: withOwnSettings(content, MAP_SETTINGS, readUnits(content) ?? ownUnits),
    rebuild: (typed) => {
      const changed = reading(typed);
      const units = readUnits(changed) ?? ownUnits;
      // What is no number in the settings is no problem on the page here.
      const read = { ...readSettings(changed, MAP_SETTINGS), problems: [] };
      const { values, problems } = settingsOnPage(MAP_SETTINGS, read, units);
      const { postSpacing = 8 } = insideSettings(MAP_SETTINGS, values, units);
      return refusedOr(() => {
        const { shapes, problems: leftOut } = mapFromBlock(changed);
        const roles = shapes.map((shape) => ({ ...shape, role: guessRole(shape) }));
        const map = measureMap(roles, postSpacing, TOLERANCE_METERS);
        const input = { map, settings: values, units, origin: changed.info, kept: keptInMap(changed, units) };
        const rebuilt = over(typed, problems, () => composeMapBlock(input));
        return 'refused' in rebuilt
          ? { refused: [...rebuilt.refused, ...leftOut] }
          : { ...rebuilt, told: [...leftOut, ...(rebuilt.told ?? [])] };
      });
    },
  };
  return { ...task, content: withOwnInputs(task.content, composed(task, task.content)) };
}
