import { type FarmMap, type MapShape, ROLES, type Role } from '../../../../shared/tasks/map/map-model';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';

const FORMS = { area: 'area', line: 'line', point: 'point' } as const;
const ROLE_WORDS: Readonly<Record<Role, string>> = {
  paddock: 'paddock',
  water: 'water',
  well: 'well or spring',
  other: 'something else',
};

interface Props {
  readonly map: FarmMap;
  readonly roles: readonly Role[];
  readonly onRole: (at: number, role: Role) => void;
}

/** Every shape of the map with what it is, to be corrected. */
export function ShapesSection({ map, roles, onRole }: Props) {
  const paddocks = roles.filter((role) => role === 'paddock').length;
  return (
    <>
      <p>
        {count(map.shapes.length, 'shape')} read, {count(paddocks, 'paddock')} among them.
      </p>
      <Problems problems={map.problems} />
      <details open={map.shapes.length <= 8}>
        <summary>Change what is what</summary>
        <ul class="shapes">
          {map.shapes.map((shape, i) => (
            <li key={shape.name}>
              <label>
                {shape.name} <span class="unit">({FORMS[shape.form]})</span>
                <select
                  value={roles[i]}
                  onChange={({ currentTarget }) => onRole(i, currentTarget.value as Role)}
                >
                  {rolesOf(shape).map((role) => (
                    <option key={role} value={role}>
                      {ROLE_WORDS[role]}
                    </option>
                  ))}
                </select>
              </label>
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}

function rolesOf({ form }: MapShape): readonly Role[] {
  return form === 'area' ? ROLES : ROLES.filter((role) => role !== 'paddock');
}

const MOST_TOLD = 6;

function Problems({ problems }: { problems: readonly string[] }) {
  if (problems.length === 0) return null;
  return (
    <Notice kind="warning">
      {count(problems.length, 'thing')} left out:
      <ul>
        {problems.slice(0, MOST_TOLD).map((problem) => (
          <li key={problem}>{problem}</li>
        ))}
        {problems.length > MOST_TOLD && <li>and {problems.length - MOST_TOLD} more.</li>}
      </ul>
    </Notice>
  );
}
