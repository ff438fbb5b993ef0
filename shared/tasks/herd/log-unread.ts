/** Tables that were written before the herd log was there, or before it grew so long: they know nothing of it, or not of all of it. */
import { quotedTab } from '../../block/a1';
import type { Book } from '../../block/book';
import { ROTATION_NAME } from '../../block/own-words';
import { standingOf } from '../standing';
import { TODAY_BLOCK } from '../today/tick-words';
import { HERD_BLOCK } from './herd-block';
import { readHerd } from './read-herd';
import * as words from './words';

const READERS = [
  [ROTATION_NAME, 'the rotation table (“Plan the moves”)'],
  [TODAY_BLOCK, 'today’s page'],
] as const;

/** A sentence that names them; undefined where all that stand read the whole log. */
export function logUnread(book: Book): string | undefined {
  const log = standingOf(book, HERD_BLOCK, 'down')?.block;
  if (!log) return undefined;
  const last = log.info.row + readHerd(log).rows.length;
  const start = `${quotedTab(log.info.tab)}!$`;
  const reachesLast = (formula: string): boolean =>
    formula
      .split(start)
      .slice(1)
      .some((reference) => Number(/^[A-Z]+\$\d+:\$[A-Z]+\$(\d+)/.exec(reference)?.[1] ?? 0) >= last);
  const blind = READERS.filter(([name]) => {
    const block = standingOf(book, name)?.block;
    return block && !block.formulas.some((row) => row.some(reachesLast));
  });
  if (blind.length === 0) return undefined;
  const which = blind.map(([, words]) => words).join(', then ');
  return words.writeAnew(which);
}
