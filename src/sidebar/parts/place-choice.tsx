import { PLACES, type Place, placeLegend, type placeOf, TAB_LABEL } from '../../../shared/tasks/place';
import { Choices } from './choices';
import { InputField } from './field';
import * as words from './words';

type Answer = (label: string, value: string) => void;

const OPTIONS = Object.entries(PLACES).map(([value, text]) => ({ value, text }));

interface Props {
  readonly of: Parameters<typeof placeOf>[0];
  readonly place: Place;
  readonly answer: Answer;
}

export function PlaceChoice({ of, place, answer }: Props) {
  return (
    <details class="rests" open={place.problem !== undefined}>
      <summary>{place.at === 'new-tab' ? `On a new tab, “${place.typed}”` : PLACES.area}</summary>
      {!of.ownTab && (
        <Choices
          legend={placeLegend(of)}
          value={place.at}
          options={OPTIONS}
          onChange={(at) => answer(placeLegend(of), PLACES[at as Place['at']])}
        />
      )}
      {place.at === 'new-tab' ? (
        <InputField
          label={TAB_LABEL}
          value={place.typed}
          problem={place.problem}
          onChange={(tab) => answer(TAB_LABEL, tab)}
        />
      ) : (
        <p class="hint">{words.SELECT_CORNER}</p>
      )}
    </details>
  );
}
