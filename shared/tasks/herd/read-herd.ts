/** Reads the herd log: the rows as typed, and those that count. */
import type { BlockContent } from '../../block/read-block';
import type { BlockCell } from '../../contract';
import type { ListProblem } from '../../lists/model';
import { symbolOf, toInside } from '../../units/units';
import { dayOf, typedTable } from '../end-line';
import { textOf } from '../rows-between';
import { readUnits } from '../settings';
import { HERD_HEADINGS, type HerdEntry, type HerdRow, leastWeight } from './herd-block';
import * as words from './words';

export interface HerdRead {
  /** Blank rows between filled ones stay where they are. */
  readonly rows: readonly HerdRow[];
  /** In the order of days. */
  readonly entries: readonly (HerdEntry & { readonly cell: string })[];
  /** Rows that are kept but cannot be counted, each with its cell. */
  readonly problems: readonly ListProblem[];
  /** Lines under the headings. */
  readonly lines: number;
}

/** Group, day, head, weight, note. */
const TYPED = 5;

export function readHerd(block: BlockContent): HerdRead {
  const units = readUnits(block) ?? 'US';
  const least = leastWeight(units);
  const problems: ListProblem[] = [];
  const { typed, filled, rows, cellOf, lines } = typedTable<HerdRow>(block, HERD_HEADINGS, TYPED);
  const entries = typed.flatMap(([group, day, head, weight], row) => {
    // A row with a note alone says nothing of the herd.
    if (!filled[row] || [group, day, head, weight].every(({ k }) => k === 'blank')) return [];
    const refuse = (column: number, must: string, got = ''): [] => {
      const cell = cellOf(row, column);
      problems.push({ cell, sentence: `${cell}: ${must}${got}` });
      return [];
    };
    const on = dayOf(day);
    const name = textOf(group).trim();
    if (name === '') return refuse(0, 'the group must be given');
    if (on === undefined) return refuse(1, 'the day must be a date', gotIn(day));
    if (head.k === 'blank' && weight.k === 'blank') return refuse(2, 'a head or a weight must be given');
    if (head.k !== 'blank' && !(head.k === 'n' && head.v >= 0 && Number.isInteger(head.v))) {
      return refuse(2, words.HEAD_MUST, gotIn(head));
    }
    if (weight.k !== 'blank' && !(weight.k === 'n' && weight.v >= least)) {
      return refuse(3, words.weightLeast(least, symbolOf('mass', units)), gotIn(weight));
    }
    const amounts = {
      ...(head.k === 'n' && { head: head.v }),
      ...(weight.k === 'n' && { weightKg: toInside(weight.v, 'mass', units) }),
    };
    return [{ group: name, day: on, ...amounts, cell: cellOf(row, 0) }];
  });
  return { rows, entries: entries.sort((a, b) => a.day - b.day), problems, lines };
}

function gotIn(cell: BlockCell): string {
  return 'v' in cell ? `, got ${JSON.stringify(cell.v)}` : '';
}
