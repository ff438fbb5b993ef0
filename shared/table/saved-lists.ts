/** Which lists a table was built from, out of its settings rows. */
import { listOfWords } from '../lists/list-memory';
import type { GroupList, ListKind, PaddockList } from '../lists/model';
import type { RotationSettings } from './model';
import type { SettingLine } from './setting-values';
import type { SettingKey } from './settings-rows';

export function savedLists(lines: ReadonlyMap<SettingKey, SettingLine>): RotationSettings['lists'] {
  const listOf = (kind: ListKind, key: SettingKey) => {
    const [tab, rows = '', ...fields] = (lines.get(key)?.values ?? []).map(String);
    return tab === undefined ? undefined : listOfWords(kind, tab, rows, fields);
  };
  const paddocks = listOf('paddocks', 'paddockList') as PaddockList | undefined;
  const groups = listOf('groups', 'groupList') as GroupList | undefined;
  return { ...(paddocks && { paddocks }), ...(groups && { groups }) };
}
