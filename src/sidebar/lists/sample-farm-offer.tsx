import type { PlanProblem } from '../../../shared/plan/model';
import { SAMPLE_FARMS } from '../../../shared/samples/index';
import type { SampleFarm } from '../../../shared/samples/sample-farm';
import type { Planned } from '../../../shared/tasks/rotation/rotation-task';
import { playSample } from '../../../shared/tasks/sample-season';
import { usePage } from '../page';
import { Button } from '../parts/button';
import { Notice } from '../parts/notice';
import { useWork } from '../parts/use-work';
import { runPlan } from '../planner/run-plan';
import { ask } from '../server';
import * as words from './words';

/** For a file without lists: an invented farm to try with, on tabs of its own. */
export function SampleFarmOffer({ onAdded }: { onAdded: () => void }) {
  const work = useWork();
  const { say } = usePage();
  const add = (farm: SampleFarm): void =>
    work.start(async () => {
      say(words.WRITING_SAMPLE);
      try {
        await playSample(ask, farm, planned);
        say(words.SAMPLE_DONE);
      } finally {
        onAdded();
      }
    });
  return (
    <Notice kind="note">
      {words.NO_LISTS_YET}
      <div class="pair">
        {SAMPLE_FARMS.map((farm) => (
          <Button key={farm.id} disabled={work.busy} onPress={() => add(farm)}>
            {farm.title}
          </Button>
        ))}
      </div>
      {work.busy && <p class="hint">{words.TAKES_SECONDS}</p>}
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  );
}

/** Worked out beside the page, which stays alive. */
function planned(problem: PlanProblem): Promise<Planned> {
  return new Promise((resolve, reject) => {
    let outcome: Planned['outcome'] | undefined;
    runPlan(problem, {
      hear: (news) => {
        if (news.kind === 'plan') outcome = news.outcome;
        if (news.kind === 'words' && outcome) resolve({ problem, outcome, words: news.words });
      },
      fail: (message) => reject(new Error(message)),
    });
  });
}
