import type { FoundList, ListKind } from './model';

/** Required fields that are not there. An area may also come as width and length. */
export function missingFields(kind: ListKind, has: (field: string) => boolean): FoundList['missing'] {
  if (kind === 'groups') return (['name', 'head', 'weight'] as const).filter((f) => !has(f));
  const missing = (['name'] as const).filter((f) => !has(f));
  return has('area') || (has('width') && has('length')) ? missing : [...missing, 'area'];
}
