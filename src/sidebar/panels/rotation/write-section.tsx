import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { PlaceChoice, usePlace } from '../../parts/place-choice';
import type { Work } from '../../parts/use-work';
import type { Place } from './write-table';

interface Props {
  /** Tabs that there are already. */
  readonly tabs: readonly string[];
  readonly work: Work;
  readonly onWrite: (place: Place) => void;
}

/** Where a first table goes, and the button that writes it. */
export function WriteSection({ tabs, work, onWrite }: Props) {
  const place = usePlace('Rotation', tabs);
  const { say } = usePage();
  return (
    <>
      <PlaceChoice legend="Where" place={place} />
      <Button
        kind="main"
        disabled={work.busy || place.problem !== undefined}
        onPress={() => {
          say('Writing the table…');
          onWrite(place.at === 'new-tab' ? { at: 'new-tab', tab: place.tab.trim() } : { at: 'selection' });
        }}
      >
        {work.busy ? 'Writing…' : 'Write the table'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </>
  );
}
