import { SETBACKS } from '../../../../shared/tables/setbacks';
import type { MeasuredMap } from '../../../../shared/tasks/map/measure-map';
import { lengthText } from '../../../../shared/tasks/map/sketch';
import type { UnitSystem } from '../../../../shared/units/units';
import { Notice } from '../../parts/notice';

/** Beside the distances: who decides, and what has been published elsewhere. */
export function SetbackNote({ map, units }: { map: MeasuredMap; units: UnitSystem }) {
  const kinds = (['water', 'well'] as const).filter((kind) => map.marks.some(({ role }) => role === kind));
  if (kinds.length === 0) {
    return (
      <p class="hint">
        Draw streams, ponds and wells as lines, areas or points in the map too, and their distances stand
        here.
      </p>
    );
  }
  return (
    <Notice kind="warning">
      How near to water and wells pigs may stand is for your local rules to say: ask your conservation
      district, water authority or well code before you fence.
      <details class="rests">
        <summary>Published elsewhere, not your law</summary>
        <ul>
          {SETBACKS.filter(({ to }) => kinds.includes(to)).map(({ meters, holds, certainty }) => (
            <li key={holds}>
              {lengthText(meters, units)}: {holds} ({certainty}).
            </li>
          ))}
        </ul>
      </details>
    </Notice>
  );
}
