/** The herd log of a file as it was read. */
import type { Book } from '../../block/book';
import type { ReadGroup } from '../../lists/model';
import type { HerdSource } from '../../table/herd-formulas';
import { standingOf } from '../standing';
import { boundHerd } from './bound-herd';
import { HERD_BLOCK } from './herd-block';
import { readHerd } from './read-herd';
import { type GroupsWithHerd, withHerd } from './with-herd';

export function groupsWithHerd(book: Book, groups: readonly ReadGroup[]): GroupsWithHerd {
  const log = standingOf(book, HERD_BLOCK)?.reading;
  return log ? withHerd(groups, readHerd(log)) : { groups, notes: [], problems: [] };
}

export function herdSource(book: Book): HerdSource | undefined {
  const log = standingOf(book, HERD_BLOCK)?.reading;
  return log && boundHerd(log);
}
