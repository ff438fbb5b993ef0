import { asking } from '../ask';
import type { Task } from '../task';
import { BITE_BLOCK, type BitePlan, biteBlock } from './bite-block';
import { BITE_SETTINGS } from './bite-settings';
import { farmLine } from './farm-line';
import { readBite } from './read-bite';
import { readLines, startLines, type TypedLine } from './typed-line';
import { WIRES } from './wires';
import * as words from './words';

export const LINES_LABEL = 'The lines';

/** Volts at the far end of each line of a fence as planned. */
export const BITE_TASK = {
  name: BITE_BLOCK,
  what: 'the volts',
  tabName: 'Fence volts',
  next: words.TRAINING_NEXT,
  read: (book, answers) => {
    const ask = asking(book, answers, BITE_BLOCK);
    const units = ask.units();
    const on = { units, comma: ask.comma };
    const read = ask.block && readBite(ask.block, units);
    const wires = read && read.wires.length > 0 ? read.wires : WIRES;
    const farm = read ? undefined : farmLine(book);
    const standing = read?.lines ?? (farm ? [farm.line] : []);
    const lines = ask.other<readonly TypedLine[]>(LINES_LABEL, read?.lines) ?? startLines(standing, on);
    const { lines: planned, problems } = readLines(lines, wires, on);
    ask.wrong(
      problems.flatMap((problem, i) =>
        problem === undefined
          ? []
          : [`${lines[i]?.Name || `Line ${i + 1}`}: ${problem || 'length is missing'}`],
      ),
    );
    const known = farm?.ohms === undefined ? {} : { ohms: farm.ohms };
    const settings = ask.settings(BITE_SETTINGS, read?.settings, units, known);
    ask.wrongInSheet(read?.problems ?? []);
    return ask.form(
      () => ({ lines: planned, wires, units, settings: settings.values }),
      { units, wires, lines, lineProblems: problems, settings },
      { sources: farm?.sources ?? {} },
    );
  },
  compose: biteBlock,
} satisfies Task<BitePlan>;
