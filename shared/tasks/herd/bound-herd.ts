import { fixedA1, quotedTab } from '../../block/a1';
import { headingRow } from '../../block/heading-row';
import type { BlockContent } from '../../block/read-block';
import type { HerdSource } from '../../table/herd-formulas';
import { readUnits } from '../settings';
import { HERD_HEADINGS, HERD_KEY, HERD_WORKING } from './herd-block';
import { readHerd } from './read-herd';

/** Rows below the log that are looked at too: it grows when it is written anew. */
const SPARE_ROWS = 20;

/** The log where it stands, for formulas elsewhere; undefined where they cannot refer to it. */
export function boundHerd(block: BlockContent): HerdSource | undefined {
  const { info, values } = block;
  const at = headingRow(values, [...HERD_HEADINGS, ...HERD_WORKING]);
  if (at < 0 || info.tab.includes("'")) return undefined;
  const column = (heading: string): string => {
    const c = info.column + values[at]!.indexOf(heading);
    return `${quotedTab(info.tab)}!${fixedA1(info.row + at, c)}:${fixedA1(info.row + info.rows - 1 + SPARE_ROWS, c)}`;
  };
  return {
    units: readUnits(block) ?? 'US',
    keys: column(HERD_KEY),
    days: column('Day'),
    heads: column('Head from then on'),
    weights: column('Weight each'),
    changes: column('Change of head'),
    changeDays: column('Change × day'),
    says: JSON.stringify(readHerd(block).entries.map(({ cell: _, ...entry }) => entry)),
  };
}
