import { type FarmMap, type MapShape, ROLES, type Role } from '../../../../shared/tasks/map/map-model';
import { ROLES_LABEL } from '../../../../shared/tasks/map/map-task';
import type { TextAnswers } from '../../../../shared/tasks/task';
import { count } from '../../parts/day-words';
import { SentencesNotice } from '../../parts/notice';
import type { MapState } from './map-panel';

const ROLE_WORDS: Readonly<Record<Role, string>> = {
  paddock: 'paddock',
  water: 'water',
  well: 'well or spring',
  other: 'something else',
};

interface Props {
  readonly map: FarmMap;
  readonly roles: readonly Role[];
  readonly state: MapState;
}

/** Every shape of the map with what it is, to be corrected. */
export function ShapesSection({ map, roles, state }: Props) {
  const change = (name: string, role: Role): void =>
    state.answer(ROLES_LABEL, { ...(state.answers[ROLES_LABEL] as TextAnswers | undefined), [name]: role });
  return (
    <ul class="shapes">
      {map.shapes.map((shape, i) => (
        <li key={shape.name}>
          <label>
            {shape.name} <span class="unit">({shape.form})</span>
            <select
              value={roles[i]}
              onChange={({ currentTarget }) => change(shape.name, currentTarget.value as Role)}
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
  );
}

/** "6 shapes read, 4 paddocks among them". */
export function shapesWords({ shapes }: FarmMap, roles: readonly Role[]): string {
  const paddocks = roles.filter((role) => role === 'paddock').length;
  return `${count(shapes.length, 'shape')} read, ${count(paddocks, 'paddock')} among them`;
}

function rolesOf({ form }: MapShape): readonly Role[] {
  return form === 'area' ? ROLES : ROLES.filter((role) => role !== 'paddock');
}

const MOST_TOLD = 6;

/** What of the map was left out, and why. */
export function MapProblems({ problems }: Pick<FarmMap, 'problems'>) {
  const more = problems.length - MOST_TOLD;
  return (
    <SentencesNotice
      kind="warning"
      lead={`${count(problems.length, 'thing')} left out:`}
      sentences={[...problems.slice(0, MOST_TOLD), ...(more > 0 ? [`and ${more} more.`] : [])]}
    />
  );
}
