import { SETBACKS } from '../../../../shared/tables/setbacks';
import type { MeasuredMap } from '../../../../shared/tasks/map/measure-map';
import { lengthText } from '../../../../shared/tasks/map/sketch';
import type { UnitSystem } from '../../../../shared/units/units';
import { Notice } from '../../parts/notice';
import * as words from './words';

/** Beside the distances: who decides, and what has been published elsewhere. */
export function SetbackNote({ map, units }: { map: MeasuredMap; units: UnitSystem }) {
  const kinds = (['water', 'well'] as const).filter((kind) => map.marks.some(({ role }) => role === kind));
  if (kinds.length === 0) {
    return <p class="hint">{words.DRAW_WATER}</p>;
  }
  return (
    <Notice kind="warning">
      {words.LOCAL_RULES}
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
