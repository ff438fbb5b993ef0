import type { MeasuredMap } from '../../../../shared/tasks/map/measure-map';
import { lengthText } from '../../../../shared/tasks/map/sketch';
import type { UnitSystem } from '../../../../shared/units/units';
import { Notice } from '../../parts/notice';
import * as words from './words';

/** More corners than this look like a walked track, not like fence corners. Judgement. */
const MANY_CORNERS = 40;
const MOST_NAMED = 5;

interface Props {
  readonly map: MeasuredMap;
  readonly units: UnitSystem;
  readonly spacingMeters: number;
}

/** What in the map may make its numbers wrong. */
export function MapWarnings({ map, units, spacingMeters }: Props) {
  const crowded = map.paddocks.filter(
    ({ corners, boundaryMeters }) =>
      corners.length > MANY_CORNERS && boundaryMeters / corners.length < spacingMeters,
  );
  const holed = map.paddocks.filter(({ holes }) => holes.length > 0);
  return (
    <>
      {map.overlapping.length > 0 && (
        <Notice kind="warning">
          {words.overlapping(some(map.overlapping.map(([one, other]) => `${one} and ${other}`)))}
        </Notice>
      )}
      {crowded.length > 0 && (
        <Notice kind="warning">
          {words.crowded(some(crowded.map(({ name, corners }) => `${name} (${corners.length} corners)`)))}
        </Notice>
      )}
      {holed.map(({ name, holesBoundaryMeters }) => (
        <Notice key={name} kind="note">
          {words.holes(name, lengthText(holesBoundaryMeters, units))}
        </Notice>
      ))}
    </>
  );
}

function some(names: readonly string[]): string {
  const more = names.length - MOST_NAMED;
  return names.slice(0, MOST_NAMED).join('; ') + (more > 0 ? `; and ${more} more` : '');
}
