import { useState } from 'preact/hooks';
import { freeTabName } from '../../../shared/block/free-tab-name';
import { Choices } from './choices';
import { InputField } from './field';

export interface ChosenPlace {
  readonly at: 'new-tab' | 'area';
  /** Name of the new tab. */
  readonly tab: string;
  /** What is wrong with the name, as a sentence. */
  readonly problem: string | undefined;
  readonly setAt: (at: 'new-tab' | 'area') => void;
  readonly setTab: (tab: string) => void;
}

/** Where a first block goes: onto a new tab, by default under a name that no tab has yet, or into an empty area. */
export function usePlace(tabName: string, tabs: readonly string[]): ChosenPlace {
  const [at, setAt] = useState<'new-tab' | 'area'>('new-tab');
  const [typed, setTab] = useState<string>();
  const tab = (typed ?? freeTabName(tabName, tabs)).trim();
  const problem = at === 'new-tab' ? tabProblem(tab, tabs) : undefined;
  return { at, tab: typed ?? tab, problem, setAt, setTab };
}

function tabProblem(tab: string, tabs: readonly string[]): string | undefined {
  if (tab === '') return 'The new tab needs a name.';
  const taken = tabs.some((name) => name.toLowerCase() === tab.toLowerCase());
  return taken ? 'There is already a tab of this name. Choose another.' : undefined;
}

const PLACES = [
  { value: 'new-tab', text: 'On a new tab' },
  { value: 'area', text: 'In the empty area at the selected cell' },
];

interface Props {
  readonly legend: string;
  readonly place: ChosenPlace;
  /** On a tab of its own, and nowhere else. */
  readonly onlyTab?: boolean;
}

export function PlaceChoice({ legend, place, onlyTab = false }: Props) {
  return (
    <>
      {!onlyTab && (
        <Choices
          legend={legend}
          value={place.at}
          options={PLACES}
          onChange={(value) => place.setAt(value === 'area' ? 'area' : 'new-tab')}
        />
      )}
      {place.at === 'new-tab' ? (
        <InputField
          label="Name of the new tab"
          value={place.tab}
          problem={place.problem}
          onChange={place.setTab}
        />
      ) : (
        <p class="hint">
          Select the cell for the upper left corner in the sheet first. Nothing that stands there is written
          over: if the area is not empty, you are told.
        </p>
      )}
    </>
  );
}
