import type { ComponentChildren } from 'preact';
import type { Card, FarmNow } from '../../../../shared/tasks/happened/farm-now';
import type { Happened, What } from '../../../../shared/tasks/happened/happened';
import { Button } from '../../parts/button';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import { startsWith } from './starts-with';
import * as words from './words';

interface Props {
  readonly farm: FarmNow;
  readonly card: Card;
  readonly open: Happened | undefined;
  readonly onToggle: (happened: Happened) => void;
  /** The form of what is open. */
  readonly children: (happened: Happened) => ComponentChildren;
}

const BUTTONS: readonly (readonly [What, string])[] = [
  ['moved', 'Moved'],
  ['not yet', 'Not moved yet'],
  ['skipped', 'Skipped'],
  ['herd', 'Head or weight'],
  ['cover', 'Cover left'],
];

/** Where a group stands and since when, what is next, and what can be recorded of it. */
export function CardView({ farm, card, open, onToggle, children }: Props) {
  const { group, head, next, training } = card;
  const can = ({ what }: { what: What }): boolean =>
    what === 'herd' || (what === 'cover' ? card.at !== undefined : what === 'moved' || next !== undefined);
  const starts = BUTTONS.map(([what, text]) => ({ what, text })).filter(can);
  const isOpen = (what: What): boolean => open?.what === what && open.group === group;
  const opened = starts.find(({ what }) => isOpen(what));
  return (
    <section aria-label={group}>
      <h2>{group}</h2>
      <p>
        {words.standsWords(card)}
        {head !== undefined && head > 0 && ` ${count(head, 'pig')}.`}
      </p>
      {training && <Notice kind="warning">{training}.</Notice>}
      {next ? <p>{words.nextWords(card, farm.today)}</p> : <p>{words.NO_MOVE_PLANNED}</p>}
      <div class="offers">
        {starts.map(({ what, text }) => (
          <Button
            key={what}
            kind={what === 'moved' ? 'main' : 'plain'}
            label={`${text}: ${group}`}
            expanded={isOpen(what)}
            onPress={() => onToggle(startsWith(farm, what, card))}
          >
            {text}
          </Button>
        ))}
      </div>
      {opened && children(startsWith(farm, opened.what, card))}
    </section>
  );
}
