import { SAMPLE_FARMS } from '../../../shared/samples/index';
import { Button } from '../parts/button';
import { Notice } from '../parts/notice';
import { useWork } from '../parts/use-work';
import { ask } from '../server';

/** For a file without lists: an invented farm to try with, on tabs of its own. */
export function SampleFarmOffer({ onAdded }: { onAdded: () => void }) {
  const work = useWork();
  const add = (sample: string): void =>
    work.start(async () => {
      await ask('startSample', { sample });
      onAdded();
    });
  return (
    <Notice kind="note">
      No lists yet? Add an invented farm on new tabs and try with it:
      <div class="pair">
        {SAMPLE_FARMS.map(({ id, title }) => (
          <Button key={id} disabled={work.busy} onPress={() => add(id)}>
            {title}
          </Button>
        ))}
      </div>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  );
}
