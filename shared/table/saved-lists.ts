/** Which lists a table was built from, out of its settings rows. */
import { columnNumber } from '../block/column-number';
import {
  GROUP_FIELDS,
  type GroupList,
  type ListKind,
  type ListOf,
  PADDOCK_FIELDS,
  type PaddockList,
} from '../lists/model';
import { LIST_UNITS, type ListUnit } from '../units/unit-words';
import type { RotationSettings } from './model';
import type { SettingLine } from './setting-values';
import type { SettingKey } from './settings-rows';

export function savedLists(lines: ReadonlyMap<SettingKey, SettingLine>): RotationSettings['lists'] {
  const paddocks = listOf('paddocks', lines.get('paddockList')) as PaddockList | undefined;
  const groups = listOf('groups', lines.get('groupList')) as GroupList | undefined;
  return { ...(paddocks && { paddocks }), ...(groups && { groups }) };
}

const LINE = /^(\w+) = ([A-Z]+)(?:, ([^:]+))?(?:: ([\s\S]*))?$/;

/** "area = C, ac: Acres" in a cell each; what cannot be read is left out, for the lists are looked for anew anyway. */
function listOf(
  kind: ListKind,
  line: SettingLine | undefined,
): (ListOf<string> & { kind: ListKind }) | undefined {
  const [tab, rows, ...fields] = (line?.values ?? []).map(String);
  const at = /row (\d+).*rows (\d+) to (\d+)/.exec(rows ?? '');
  if (tab === undefined || !at) return undefined;
  const columns: Record<string, number> = {};
  const units: Record<string, ListUnit> = {};
  const texts: Record<string, string> = {};
  const known: readonly string[] = kind === 'paddocks' ? PADDOCK_FIELDS : GROUP_FIELDS;
  for (const text of fields) {
    const [, field, letters, unit, heading] = LINE.exec(text) ?? [];
    if (field === undefined || letters === undefined || !known.includes(field)) continue;
    columns[field] = columnNumber(letters);
    if (heading !== undefined) texts[field] = heading;
    if (unit !== undefined && unit in LIST_UNITS) units[field] = unit as ListUnit;
  }
  return {
    kind,
    tab,
    headingRow: Number(at[1]),
    firstRow: Number(at[2]),
    lastRow: Number(at[3]),
    columns,
    units,
    ...(Object.keys(texts).length > 0 && { texts }),
  };
}
