/** "What happened": a card for each group, what can be recorded of it, and what that does to the plan. */
import { useMemo, useState } from 'preact/hooks';
import type { CellChange } from '../../../../shared/contract';
import { farmNow } from '../../../../shared/tasks/happened/farm-now';
import type { Happened } from '../../../../shared/tasks/happened/happened';
import { takeBack } from '../../../../shared/tasks/happened/record';
import { logUnread } from '../../../../shared/tasks/herd/log-unread';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Notice, SentencesNotice } from '../../parts/notice';
import type { Book } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { WithBook } from '../../parts/with-book';
import { ask, writesSoFar } from '../../server';
import { CardView } from './card-view';
import { HappenedForm } from './happened-form';
import { startsWith } from './starts-with';
import * as words from './words';

/** What was recorded last, here or before this task was opened again; `at`: how much was written by then. */
let last:
  | { readonly cells: readonly CellChange[]; readonly words: readonly string[]; readonly at: number }
  | undefined;

export function HappenedPanel() {
  return <WithBook>{(book, reread) => <HappenedSteps book={book} onReread={reread} />}</WithBook>;
}

function HappenedSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const farm = useMemo(() => farmNow(book), [book]);
  const unread = useMemo(() => logUnread(book), [book]);
  const [open, setOpen] = useState<Happened>();
  const work = useWork();
  const page = usePage();
  if ('missing' in farm) return <SentencesNotice kind="note" sentences={farm.missing} />;
  const onDone = (cells: readonly CellChange[], words: readonly string[]): void => {
    last = { cells, words, at: writesSoFar() };
    setOpen(undefined);
    page.say('Written.');
    onReread();
  };
  const back = (cells: readonly CellChange[]): void =>
    work.start(async () => {
      await takeBack(ask, cells);
      last = undefined;
      page.say('Taken back.');
      onReread();
    });
  const form = (happened: Happened) => (
    <HappenedForm key={JSON.stringify(happened)} farm={farm} start={happened} onDone={onDone} />
  );
  const toggle = (happened: Happened): void =>
    setOpen((now) =>
      now === undefined || now.what !== happened.what || now.group !== happened.group ? happened : undefined,
    );
  const isDue = farm.cards.some(({ open: moves }) => moves.some(({ inDay }) => inDay! <= farm.today));
  const whole = (what: 'as planned' | 'shut', text: string) => {
    const start = startsWith(farm, what);
    return (
      <>
        <Button expanded={open?.what === what} onPress={() => toggle(start)}>
          {text}
        </Button>
        {open?.what === what && form(start)}
      </>
    );
  };
  return (
    <>
      {last?.at === writesSoFar() && (
        // Anew for each record, so that each takes the focus.
        <Notice key={last.at} kind="done" takeFocus>
          {last.words.join('; ')}.{' '}
          <Button disabled={work.busy} onPress={() => last && back(last.cells)}>
            Take it back
          </Button>{' '}
          <Button onPress={() => page.open(words.PLAN_TASK)}>{words.PLAN_ANEW}</Button>
        </Notice>
      )}
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
      {unread && <Notice kind="warning">{unread}</Notice>}
      {isDue && whole('as planned', 'All as planned up to today')}
      {farm.cards.map((card) => (
        <CardView key={card.group} farm={farm} card={card} open={open} onToggle={toggle}>
          {form}
        </CardView>
      ))}
      <h2>The whole farm</h2>
      {whole('shut', 'A paddock is shut')}
      <p class="hint">{words.BY_HAND}</p>
    </>
  );
}
