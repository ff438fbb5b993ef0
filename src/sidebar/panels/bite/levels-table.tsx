import { VOLT_LEVELS } from '../../../../shared/tasks/bite/levels';
import { ScrollRegion } from '../../parts/scroll-region';

/** Levels with their certainty: none for pigs is official. */
export function LevelsTable() {
  return (
    <>
      <p class="hint">
        No official level for pigs was found. “On the fence” and “delivered to the animal” are different
        things.
      </p>
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
