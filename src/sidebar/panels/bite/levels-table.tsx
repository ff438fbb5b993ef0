import { VOLT_LEVELS } from '../../../../shared/tasks/bite/levels';
import { ScrollRegion } from '../../parts/scroll-region';
import * as words from './words';

/** Levels with their certainty: none for pigs is official. */
export function LevelsTable() {
  return (
    <>
      <p class="hint">{words.NO_OFFICIAL_LEVEL}</p>
      <ScrollRegion label="Levels that are named">
        <table>
          <thead>
            <tr>
              <th scope="col">Stock</th>
              <th scope="col">Volts</th>
              <th scope="col">Where</th>
              <th scope="col">How sure</th>
            </tr>
          </thead>
          <tbody>
            {VOLT_LEVELS.map(({ stock, volts, meaning, certainty, source }) => (
              <tr key={`${stock} ${volts}`}>
                <th scope="row">{stock}</th>
                <td>{volts}</td>
                <td>{meaning}</td>
                <td>
                  {certainty}: {source}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollRegion>
    </>
  );
}
