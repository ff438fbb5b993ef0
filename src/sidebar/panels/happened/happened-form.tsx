import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { CellChange } from '../../../../shared/contract';
import { nameKey } from '../../../../shared/lists/read-list-cell';
import type { Card, FarmNow } from '../../../../shared/tasks/happened/farm-now';
import type { Happened } from '../../../../shared/tasks/happened/happened';
import { record } from '../../../../shared/tasks/happened/record';
import { typedFor, typingWords } from '../../../../shared/tasks/happened/typed-for';
import { NO_LOG } from '../../../../shared/tasks/happened/words';
import { HERD_TASK } from '../../../../shared/tasks/herd/herd-task';
import { writeTask } from '../../../../shared/tasks/run-task';
import { symbolOf } from '../../../../shared/units/units';
import { Button } from '../../parts/button';
import { dayWords } from '../../parts/day-words';
import { InputField, type Option, SelectField } from '../../parts/field';
import { Notice } from '../../parts/notice';
import { Sentence } from '../../parts/sentence';
import { useReread } from '../../parts/use-book';
import { useWork } from '../../parts/use-work';
import { ask } from '../../server';
import { PlanAfter } from './plan-after';
import * as words from './words';

interface Props {
  readonly farm: FarmNow;
  readonly start: Happened;
  /** With the cells that were written, and in words. */
  readonly onDone: (cells: readonly CellChange[], words: readonly string[]) => void;
}

/** Asks what is needed of something that has happened, shows what will be written and what it does, and writes it. */
export function HappenedForm({ farm, start, onDone }: Props) {
  const [typed, setTyped] = useState<Happened>();
  const happened = typed ?? start;
  const set = (more: Partial<Happened>): void => setTyped({ ...happened, ...more });
  const read = useMemo(() => typedFor(farm, happened), [farm, JSON.stringify(happened)]);
  const work = useWork();
  // What nobody has come to yet is not called wrong.
  const wrong = 'problem' in read && (typed || !ASKED_FIRST.includes(happened.what)) ? read : undefined;
  const typings = 'typed' in read ? read.typed : [];
  const lines = typings.map(typingWords);
  const cells = typings.map(({ cell }) => cell);
  const write = (): void => work.start(async () => onDone(await record(ask, happened, cells), lines));
  if ('problem' in read && read.problem === NO_LOG) return <BeginLog farm={farm} />;
  const problemOf = (field: keyof Happened) => (wrong?.field === field ? wrong.problem : undefined);
  return (
    <div class="answer">
      <Fields farm={farm} happened={happened} set={set} problemOf={problemOf} />
      {wrong && wrong.field === undefined && <Notice kind="note">{wrong.problem}</Notice>}
      {'typed' in read && (
        <>
          <h3>Into the sheet</h3>
          <ul>
            {lines.map((line) => (
              <li key={line}>
                <Sentence text={line} />
              </li>
            ))}
          </ul>
          <PlanAfter farm={farm} cells={cells} />
          {happened.what === 'moved' && happened.move === '' && <p class="hint">{words.UNPLANNED_NOTE}</p>}
        </>
      )}
      <Button kind="main" disabled={work.busy || !('typed' in read)} onPress={write}>
        {work.busy ? 'Writing…' : 'Write it'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </div>
  );
}

const ASKED_FIRST: readonly Happened['what'][] = ['herd', 'cover'];

interface FieldsProps {
  readonly farm: FarmNow;
  readonly happened: Happened;
  readonly set: (more: Partial<Happened>) => void;
  readonly problemOf: (field: keyof Happened) => string | undefined;
}

function Fields({ farm, happened, set, problemOf }: FieldsProps) {
  const { what, group, move = '', day = '' } = happened;
  const card = farm.cards.find((one) => one.group === group);
  const planned = card?.moves.find(({ id }) => id === move);
  const paddocks = farm.lists.paddocks.map(({ name }) => ({ value: name, text: name }));
  const first = paddocks[0]?.value ?? '';
  const inList = (name: string): string =>
    paddocks.find(({ value }) => nameKey(value) === nameKey(name))?.value ?? name;
  const dayField = (label: string) => (
    <InputField
      type="date"
      label={label}
      value={day}
      problem={problemOf('day')}
      onChange={(value) => set({ day: value })}
    />
  );
  const moveField = (label: string, options: readonly Option[]) => (
    <SelectField
      label={label}
      value={move}
      options={options}
      problem={problemOf('move')}
      onChange={(id) => set({ move: id, ...(what === 'moved' && { paddock: id === '' ? first : '' }) })}
    />
  );
  const paddockField = (label: string, value: string) => (
    <SelectField
      label={label}
      value={inList(value)}
      options={
        paddocks.some((one) => one.value === inList(value)) ? paddocks : [{ value, text: value }, ...paddocks]
      }
      problem={problemOf('paddock')}
      onChange={(paddock) => set({ paddock })}
    />
  );
  switch (what) {
    case 'moved':
      return (
        <>
          {moveField('Which move', [...openMoves(card), { value: '', text: 'One that is not in the plan' }])}
          {paddockField('Into', happened.paddock || planned?.paddock || first)}
          {dayField('On')}
        </>
      );
    case 'skipped':
      return moveField('Which move was left out', openMoves(card));
    case 'not yet':
      return (
        <>
          {moveField('Which move', openMoves(card))}
          {dayField('It will be on')}
        </>
      );
    case 'herd':
      return <HerdFields {...{ farm, happened, set, problemOf }}>{dayField('From which day on')}</HerdFields>;
    case 'cover':
      return (
        <>
          {moveField('After the stay in', begun(card))}
          <InputField
            label="Cover left (%)"
            hint={words.COVER_NOTE}
            value={happened.cover ?? ''}
            problem={problemOf('cover')}
            onChange={(cover) => set({ cover })}
          />
        </>
      );
    case 'shut':
      return (
        <>
          {paddockField('Paddock', happened.paddock ?? '')}
          {dayField('Shut from')}
          <InputField
            type="date"
            label="Shut up to"
            hint={words.SHUT_NOTE}
            value={happened.until ?? ''}
            problem={problemOf('until')}
            onChange={(until) => set({ until })}
          />
        </>
      );
    default:
      return null;
  }
}

function HerdFields(props: FieldsProps & { children: ComponentChildren }) {
  const { farm, happened, set, problemOf, children } = props;
  const { units } = useMemo(() => HERD_TASK.read(farm.book, {}), [farm.book]);
  return (
    <>
      {children}
      <InputField
        label="Head from then on"
        hint={words.HEAD_NOTE}
        value={happened.head ?? ''}
        problem={problemOf('head')}
        onChange={(head) => set({ head })}
      />
      {happened.head?.trim() === '0' && (
        <label class="choice">
          <input
            type="checkbox"
            checked={happened.allGone === true}
            onChange={(event) => set({ allGone: event.currentTarget.checked })}
          />
          {words.ALL_GONE}
        </label>
      )}
      <InputField
        label={`Weight each, if weighed (${symbolOf('mass', units)})`}
        value={happened.weight ?? ''}
        problem={problemOf('weight')}
        onChange={(weight) => set({ weight })}
      />
      <InputField label="Note" value={happened.note ?? ''} onChange={(note) => set({ note })} />
    </>
  );
}

function openMoves(card: Card | undefined): Option[] {
  return (card?.open ?? []).map(moveOption);
}

/** Stays up to today, the latest first. */
function begun(card: Card | undefined): Option[] {
  const { moves = [], at } = card ?? {};
  const stays = at ? moves.slice(0, moves.indexOf(at) + 1) : [];
  return stays.map(moveOption).reverse();
}

function moveOption({ id, paddock, inDay }: Card['moves'][number]): Option {
  return { value: id, text: `${paddock}, ${dayWords(inDay!)}` };
}

/** The record of heads and weights is a table of its own, written once. */
function BeginLog({ farm }: { farm: FarmNow }) {
  const work = useWork();
  const reread = useReread();
  const begin = (): void =>
    work.start(async () => {
      reread((await writeTask(ask, HERD_TASK, farm.book, HERD_TASK.read(farm.book, {}), {})).after);
    });
  return (
    <div class="answer">
      <p>{words.LOG_NOTE}</p>
      <Button kind="main" disabled={work.busy} onPress={begin}>
        {work.busy ? 'Writing…' : 'Begin the herd log'}
      </Button>
      {work.problem && <Notice kind="problem">{work.problem}</Notice>}
    </div>
  );
}
