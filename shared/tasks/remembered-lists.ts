import type { Book } from '../block/book';
import { oncePer } from '../block/once-per';
import { ROTATION_NAME } from '../block/own-words';
import { rememberedList } from '../lists/list-memory';
import type { RotationSettings } from '../table/model';
import { BUDGET_BLOCK } from './budget/budget-block';
import { MATERIALS_BLOCK } from './materials/materials-block';
import { standingRotation } from './rotation/rotation-standing';
import { standingOf } from './standing';

/** Tables that remember their lists, in the order in which they are asked. */
const ASKED = [ROTATION_NAME, MATERIALS_BLOCK, BUDGET_BLOCK];
type Remembered = RotationSettings['lists'];

/**
 * Which lists and columns the grower settled on, for every task alike: as the rotation table says in its cells, and for a
 * list that it does not name the materials or the budget.
 */
export const rememberedLists = oncePer((book: Book): Remembered => {
  const [paddocks, groups] = (['paddocks', 'groups'] as const).map((kind) =>
    ASKED.map((name) => listIn(book, name, kind)).find((list) => list !== undefined),
  );
  return { ...(paddocks && { paddocks }), ...(groups && { groups }) } as Remembered;
});

function listIn(book: Book, name: string, kind: 'paddocks' | 'groups') {
  if (name === ROTATION_NAME) return standingRotation(book)?.rotation.settings?.lists[kind];
  const block = standingOf(book, name)?.reading;
  return block && rememberedList(block, kind);
}
