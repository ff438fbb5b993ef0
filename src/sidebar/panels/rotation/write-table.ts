/** Builds the block and has the script write it. */
import type { WriteDone } from '../../../../shared/contract';
import type { Corner, RotationBlockInput } from '../../../../shared/table/model';
import type { OldTable } from '../../../../shared/tasks/rotation/old-table';
import { ask } from '../../server';
import { rotationRequest } from './rotation-request';

export type NewPlace = { readonly at: 'new-tab'; readonly tab: string } | { readonly at: 'selection' };
export type Place =
  /** `replaces`: last season's table, which gives its name to the new one. */
  | (NewPlace & { readonly replaces: OldTable | undefined })
  | { readonly at: 'own'; readonly old: OldTable; readonly putBack?: boolean };

export async function writeTable(
  input: Omit<RotationBlockInput, 'corner'>,
  place: Place,
): Promise<WriteDone> {
  const corner = await cornerOf(place);
  if (place.at === 'own') return ask('writeBlock', rotationRequest(input, corner, place));
  const where =
    place.at === 'new-tab'
      ? ({ at: 'new-tab', tab: place.tab } as const)
      : ({ at: 'area', ...corner } as const);
  return ask('writeBlock', {
    ...rotationRequest(input, corner, { place: where }),
    ...(place.replaces && { replaces: true }),
  });
}

async function cornerOf(place: Place): Promise<Corner> {
  if (place.at === 'new-tab') return { tab: place.tab, row: 1, column: 1 };
  const { tab, row, column } = place.at === 'own' ? place.old.info : await ask('readSelection', {});
  return { tab, row, column };
}
