import type { MeasuredMap, MeasuredPaddock } from '../../../../shared/tasks/map/measure-map';
import { areaText, lengthText } from '../../../../shared/tasks/map/sketch';
import type { UnitSystem } from '../../../../shared/units/units';
import { ScrollRegion } from '../../parts/scroll-region';

/** Long lists are cut in the page; the sheet gets all of them. */
const MOST_ROWS = 60;

/** The drawing in numbers and words. */
export function MapNumbers({ map, units }: { map: MeasuredMap; units: UnitSystem }) {
  const [water, well] = [
    map.paddocks.some(({ waterMeters }) => waterMeters !== undefined),
    map.paddocks.some(({ wellMeters }) => wellMeters !== undefined),
  ];
  const heads = [
    'Paddock',
    'Area',
    'Perimeter',
    'Posts',
    'Adjoining',
    ...(water ? ['To water'] : []),
    ...(well ? ['To well'] : []),
    'Sides',
  ];
  const distance = (meters: number | undefined): string =>
    meters === undefined ? '' : lengthText(meters, units);
  const cells = (paddock: MeasuredPaddock): readonly string[] => [
    areaText(paddock.areaSquareMeters, units),
    lengthText(paddock.boundaryMeters, units),
    String(paddock.posts),
    paddock.adjoining.join(', ') || 'none',
    ...(water ? [distance(paddock.waterMeters)] : []),
    ...(well ? [distance(paddock.wellMeters)] : []),
    paddock.sidesMeters.map((side) => lengthText(side, units)).join(', '),
  ];
  return (
    <ScrollRegion label="Paddocks of the map, scrolls sideways">
      <table class="wide">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {map.paddocks.slice(0, MOST_ROWS).map((paddock) => (
            <tr key={paddock.name}>
              <th scope="row">{paddock.name}</th>
              {cells(paddock).map((cell, i) => (
                <td key={heads[i + 1]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {map.paddocks.length > MOST_ROWS && <p>and {map.paddocks.length - MOST_ROWS} more in the sheet</p>}
    </ScrollRegion>
  );
}
