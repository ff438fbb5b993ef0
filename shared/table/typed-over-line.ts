import { isoFromDay } from '../core/calendar/day';
import { nameKey } from '../lists/read-list-cell';
import type { OldRow } from './model';

interface Names {
  readonly groups: readonly { readonly name: string }[];
  readonly paddocks: readonly { readonly name: string }[];
}

/** The plan takes these from the lists and from itself, so what was typed into a move to come is kept as a line. */
export function typedOverLine(row: OldRow, rows: readonly OldRow[], lists: Names): string[] {
  const { group, paddock, inDay, typedOver } = row;
  const names = [
    ...(isTypedOver(row, 'group', rows, lists.groups) ? [`Group “${group}”`] : []),
    ...(isTypedOver(row, 'paddock', rows, lists.paddocks) ? [`Paddock “${paddock}”`] : []),
  ];
  const said = [
    ...(names.length > 0 ? [`${names.join(' and ')} not in the lists, planned anew`] : []),
    ...(typedOver.length > 0 ? [`${typedOver.join(', ')} typed over the formula, which stands again`] : []),
  ];
  if (said.length === 0) return [];
  const day = inDay === undefined ? '' : ` ${isoFromDay(inDay)}`;
  return [`${group}, ${paddock}${day}: ${said.join('; ')}`];
}

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
