import { Button } from '../../parts/button';
import { PlaceChoice, usePlace } from '../../parts/place-choice';
import type { NewPlace } from './write-table';

interface Props {
  /** Tabs that there are already. */
  readonly tabs: readonly string[];
  readonly busy: boolean;
  readonly onWrite: (place: NewPlace) => void;
}

const TABLE = { what: 'the table', tabName: 'Rotation' };

/** Where a first table goes, and the button that writes it. */
export function WriteSection({ tabs, busy, onWrite }: Props) {
  const { place, answer } = usePlace(TABLE, tabs);
  return (
    <>
      <PlaceChoice of={TABLE} place={place} answer={answer} />
      <Button
        kind="main"
        disabled={busy || place.problem !== undefined}
        onPress={() => {
          onWrite(place.at === 'new-tab' ? { at: 'new-tab', tab: place.tab } : { at: 'selection' });
        }}
      >
        {busy ? 'Writing…' : 'Write the table'}
      </Button>
    </>
  );
}
