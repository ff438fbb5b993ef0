import { nameKey } from '../lists/read-list-cell';
import type { PlanRules } from '../plan/model';
import type { ColumnKey } from './columns';
import { FIELDS, isOther, type Lists, listedFigures } from './listed-figures';
import type { OldRow, PastRow } from './model';
import { moveName } from './move-name';
import { wholeDays } from './own-cell';

interface FarmNow extends Lists {
  readonly rules: PlanRules;
}

/** What was typed over a move's own and cannot stay in its cell, as a line; `isPast`: its names are what they were. */
export function typedOverLine(
  row: OldRow,
  rows: readonly OldRow[],
  lists: FarmNow,
  isPast = false,
): string[] {
  const { group, paddock } = row;
  const over = row.typedOver
    .filter(({ key, stays, cell }) => {
      // Whole days of a move that has happened are what they were, see daysSet.
      const isDaysOfPast = isPast && key === 'days' && wholeDays(cell.value) !== undefined;
      return !stays && !isDaysOfPast && !isAsListed(row, key, lists);
    })
    .map(({ words }) => words);
  const names = isPast
    ? []
    : [
        ...(isTypedOver(row, 'group', rows, lists.groups) ? [`Group “${group}”`] : []),
        ...(isTypedOver(row, 'paddock', rows, lists.paddocks) ? [`Paddock “${paddock}”`] : []),
      ];
  const said = [
    ...(names.length > 0 ? [`${names.join(' and ')} not in the lists, planned anew`] : []),
    ...(over.length > 0 ? [`${over.join(', ')} typed over, the table’s own stands again`] : []),
  ];
  if (said.length === 0) return [];
  return [`${moveName(row)}: ${said.join('; ')}`];
}

/**
 * Whether a figure is what the builder writes where it cannot write a lookup: numbers kept as text in a list, rest
 * from forage growth.
 */
function isAsListed(row: OldRow, key: ColumnKey, lists: FarmNow): boolean {
  if (key === 'restDue') return lists.rules.rest.kind === 'forage' && row.restDueDays !== undefined;
  if (row.inDay === undefined) return false;
  const { paddock, listed } = listedFigures({ ...row, inDay: row.inDay }, lists);
  const all: Partial<PastRow> = {
    ...(paddock?.lastUsed !== undefined && { lastUsed: paddock.lastUsed }),
    ...listed,
  };
  const field = LISTED[key];
  const [shown, says] = field ? [row[field as keyof OldRow], all[field]] : [undefined, undefined];
  return typeof shown === 'number' && typeof says === 'number' && !isOther(shown, says);
}

const LISTED: Partial<Record<ColumnKey, keyof PastRow>> = {
  ...FIELDS,
  openFrom: 'openFrom',
  openUntil: 'openUntil',
  lastUsed: 'lastUsed',
};

/** A name that is in no list and in no other move; one that has left the list still stands in several. */
function isTypedOver(
  row: OldRow,
  field: 'group' | 'paddock',
  rows: readonly OldRow[],
  list: readonly { readonly name: string }[],
): boolean {
  const key = nameKey(row[field]);
  return ![
    ...list.map(({ name }) => name),
    ...rows.flatMap((other) => (other === row ? [] : [other[field]])),
  ].some((name) => nameKey(name) === key);
}
