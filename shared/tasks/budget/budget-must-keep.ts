import type { BlockContent } from '../../block/read-block';
import type { WireCell } from '../../contract';
import { isMemory, MEMORY_LABELS } from '../../lists/list-memory';
import { refuseTypedOver } from '../typed-over-cells';
import { type OwnPart, ownTable, rowOfLabel, withoutOwn } from '../without-own';
import { LOAD_HEADINGS, MONTH_HEADINGS, SEASON_TITLE } from './budget-block';
import { isOriginOrWarning } from './origin-words';
import { COUNTED_HEADINGS, STAY_HEADINGS } from './stay-columns';
import { typedOver } from './typed-over';

/** What the builder writes into the stays where it writes values. */
const KINDS: readonly { of: readonly string[]; isOurs: (value: WireCell) => boolean }[] = [
  { of: STAY_HEADINGS.slice(0, 2), isOurs: (value) => typeof value === 'string' },
  { of: ['In'], isOurs: (value) => typeof value === 'object' },
  {
    of: [...STAY_HEADINGS.slice(3), ...COUNTED_HEADINGS],
    isOurs: (value) => typeof value === 'number' || value === '' || String(value).startsWith('#'),
  },
];

/** In the row under the headings only the cell functions are the builder's. */
function withoutAnchor(part: OwnPart): OwnPart {
  return { ...part, firstRow: part.firstRow + 1 };
}

/**
 * What of a budget must not get lost: all but the sentences on top and what stands in its own tables.
 *
 * Throws, with the cells, where a value was typed over a formula: a new budget would set the formula again, and the
 * same number elsewhere in it would make the typed one look kept.
 */
export function budgetMustKeep(old: BlockContent): BlockContent {
  const { surely, perhaps } = typedOver(old);
  refuseTypedOver(old, surely);
  const less = withoutOwn(old, [
    {
      firstRow: 0,
      endRow: rowOfLabel(old, SEASON_TITLE),
      columns: (column) => column === 0,
      isOurs: isOriginOrWarning,
    },
    ownTable(old, MONTH_HEADINGS, MONTH_HEADINGS, 'On the ground'),
    ownTable(old, LOAD_HEADINGS, LOAD_HEADINGS.slice(1, -1), 'Settings'),
    namesOfLoads(old),
    ...Object.values(MEMORY_LABELS).map((label) => memoryOf(old, label)),
    ...KINDS.map(({ of, isOurs }) => ({ ...withoutAnchor(ownTable(old, STAY_HEADINGS, of)), isOurs })),
  ]);
  const doubtful = new Set(perhaps.map(String));
  const values = less.values.map((row, r) =>
    row.map((value, c) => (doubtful.has(String([r, c])) ? (old.values[r]?.[c] ?? '') : value)),
  );
  return { ...less, values };
}

/** The words that say which list it was made from. */
function memoryOf(old: BlockContent, label: string): OwnPart {
  const firstRow = rowOfLabel(old, label);
  return { firstRow, endRow: firstRow + 1, columns: (column) => column > 0, isOurs: isMemory };
}

/** A paddock that was renamed has another name among the stays by now: names that go are told once it is written. */
function namesOfLoads(old: BlockContent): OwnPart {
  const part = ownTable(old, LOAD_HEADINGS, ['Paddock'], 'Settings');
  // Every paddock has its sums beside it.
  const count = old.formulas.slice(part.firstRow).findIndex((row) => !row[1]);
  const endRow = count < 0 ? part.endRow : Math.min(part.endRow, part.firstRow + count);
  return { ...part, endRow, isOurs: (value) => typeof value === 'string' };
}
