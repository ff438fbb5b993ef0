/** The volts of a fence as planned and the log of fence walks, rebuilt as their panel does. */

import { startUnits } from '../../shared/lists/start-units';
import { BITE_BLOCK, biteBlock } from '../../shared/tasks/bite/bite-block';
import { BITE_SETTINGS } from '../../shared/tasks/bite/bite-settings';
import { readBite } from '../../shared/tasks/bite/read-bite';
import { readWalk } from '../../shared/tasks/bite/read-walk';
import { readLines, startLines } from '../../shared/tasks/bite/typed-line';
import { WALK_BLOCK, WALK_SETTINGS, walkBlock } from '../../shared/tasks/bite/walk-block';
import { WIRES } from '../../shared/tasks/bite/wires';
import { readUnits } from '../../shared/tasks/settings';
import type { Book } from '../../src/sidebar/parts/use-book';
import type { TypedTask } from './typed-cells';
import { contentOf, over, reading } from './typed-over';
import { settingsOnPage, withOwnSettings } from './typed-settings';

export function biteTask(book: Book): TypedTask {
  const content = contentOf(book, BITE_BLOCK);
  const ownUnits = startUnits(book);
  return {
    name: 'Bite',
    content: withOwnSettings(content, BITE_SETTINGS, readUnits(content) ?? ownUnits),
    rebuild: (typed) => {
      const changed = reading(typed);
      const units = readUnits(changed) ?? ownUnits;
      const on = { units, comma: false };
      const read = readBite(changed, units);
      const settings = settingsOnPage(BITE_SETTINGS, read.settings, units);
      const wires = read.wires.length > 0 ? read.wires : WIRES;
      // Where the page asks for a length or for another wire, they are given.
      const isWire = (wire: string): boolean => wires.some(({ name }) => name === wire);
      const begun = startLines(read.lines, on).map(({ length, wire, ...line }) => ({
        ...line,
        length: length || '100',
        wire: isWire(wire) ? wire : wires[0]!.name,
      }));
      const lines = readLines(begun, wires, on);
      const told = readLines(startLines(read.lines, on), wires, on).problems.flatMap((one) => one ?? []);
      const problems = [
        ...read.problems,
        ...settings.problems,
        ...lines.problems.flatMap((problem) => problem ?? []),
      ];
      const plan = { lines: lines.lines, wires, units, settings: settings.values };
      const rebuilt = over(typed, problems, () => biteBlock(plan, changed.info));
      return 'refused' in rebuilt ? rebuilt : { ...rebuilt, told };
    },
  };
}

export function walkTask(book: Book): TypedTask {
  return {
    name: 'Fence walk',
    content: withOwnSettings(contentOf(book, WALK_BLOCK), WALK_SETTINGS, 'US'),
    rebuild: (typed) => {
      const changed = reading(typed);
      const read = readWalk(changed);
      // What is no number in the settings is no problem on the page here.
      const settings = settingsOnPage(WALK_SETTINGS, { ...read.settings, problems: [] }, 'US');
      const room = { lines: read.lines, below: Number.POSITIVE_INFINITY };
      const compose = () => walkBlock(read.rows, settings.values, changed.info, room);
      return over(typed, settings.problems, compose);
    },
  };
}
