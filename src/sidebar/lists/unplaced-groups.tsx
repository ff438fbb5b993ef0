import { useState } from 'preact/hooks';
import { dayFromIso } from '../../../shared/core/calendar/day';
import type { UnplacedGroup } from '../../../shared/lists/read-groups';
import { type Placed, unplacedCells } from '../../../shared/tasks/unplaced-cells';
import { Button } from '../parts/button';
import { SelectField } from '../parts/field';
import { Notice } from '../parts/notice';
import { useChangeCells } from '../parts/use-change-cells';
import type { Lists } from './use-lists';
import * as words from './words';

/** For each group that stands in no paddock of the list a question: one press says what is meant. */
export function UnplacedAsked({ lists, today }: { lists: Lists; today: string }) {
  return lists.unplaced.map((group) => (
    <Asked key={group.sentence} group={group} lists={lists} today={today} />
  ));
}

function Asked({ group, lists, today }: { group: UnplacedGroup; lists: Lists; today: string }) {
  const work = useChangeCells();
  const [paddock, setPaddock] = useState('');
  const source = lists.sources.groups!;
  const write = (placed: Placed | undefined): void => {
    if (placed !== undefined)
      work.change(() => unplacedCells(source, group, placed), words.placed(group.name));
  };
  const names = lists.paddocks.map(({ name }) => name.trim());
  return (
    <Notice kind="warning">
      {group.sentence}
      <div class="pair">
        <Button disabled={work.busy} onPress={() => write('out')}>
          Leave it out
        </Button>
        <Button disabled={work.busy} onPress={() => write(dayFromIso(today))}>
          It goes into the paddocks now
        </Button>
      </div>
      <p class="hint">{words.INTO_FROM}</p>
      {source.list.columns.paddock !== undefined && (
        <>
          <SelectField
            label="Or it stands in"
            value={paddock}
            options={['', ...names].map((name) => ({ value: name, text: name || '(choose a paddock)' }))}
            onChange={setPaddock}
          />
          {paddock !== '' && (
            <Button disabled={work.busy} onPress={() => write({ paddock })}>
              Write “{paddock}” into your list
            </Button>
          )}
        </>
      )}
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </Notice>
  );
}
