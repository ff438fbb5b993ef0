/** The one frame of a task: the answer and its button first, below them what it rests on. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { SettingsForm } from '../../../shared/tasks/ask';
import { settingUnit } from '../../../shared/tasks/settings';
import type { Task } from '../../../shared/tasks/task';
import { formatNumber } from '../numbers/format-number';
import { Cautions } from './cautions';
import { SheetProblems } from './task-fields';
import type { Book } from './use-book';
import type { TaskState } from './use-task';
import { WriteBlock } from './write-block';

/** Some of what the answer rests on. */
export interface Rest {
  readonly title: string;
  /** As it stands now, in a line. */
  readonly words?: string | undefined;
  /** Something in it is missing or wrong: asked first, before there is an answer. */
  readonly isAsked?: boolean;
  readonly fields: ComponentChildren;
}

interface FrameProps {
  /** What has to be known before the answer. */
  readonly before?: ComponentChildren;
  /** The card with the key figure; undefined while something is missing. */
  readonly answer: ComponentChildren;
  /** The main button and what belongs to it. */
  readonly button: ComponentChildren;
  readonly cautions?: readonly string[];
  /** What else the answer says. */
  readonly more?: ComponentChildren;
  readonly rests?: readonly Rest[];
}

export function Frame({ before, answer, button, cautions = [], more, rests = [] }: FrameProps) {
  // What was asked first stays where it is once it is answered: nobody loses the field that is being typed into.
  const [asked] = useState(() => rests.filter(({ isAsked }) => isAsked).map(({ title }) => title));
  const first = rests.filter(({ title }) => asked.includes(title));
  const others = rests.filter(({ title }) => !asked.includes(title));
  return (
    <>
      {before}
      {first.map(({ title, fields }) => (
        <section key={title}>
          <h2>{title}</h2>
          {fields}
        </section>
      ))}
      <section key="answer">
        {answer}
        {button}
        <Cautions sentences={cautions} />
        {more}
      </section>
      {others.length > 0 && <h2>What this rests on</h2>}
      {others.map(({ title, words, fields }) => (
        <details key={title} class="rests">
          <summary>
            <strong>{title}</strong>
            {words && <span class="hint">: {words}</span>}
          </summary>
          {fields}
        </details>
      ))}
    </>
  );
}

interface Props extends Omit<FrameProps, 'button'> {
  readonly task: Task;
  readonly state: TaskState;
  readonly book: Book;
  /** What else is to happen once it is written. */
  readonly onDone?: () => void;
  /** Why nothing can be written yet. */
  readonly missing?: string;
}

/** The frame of a task that writes a block. */
export function TaskScreen({ task, state, book, onDone, missing, before, ...rest }: Props) {
  return (
    <Frame
      {...rest}
      before={
        <>
          <SheetProblems state={state} />
          {before}
        </>
      }
      button={
        <WriteBlock
          task={task}
          state={state}
          book={book}
          onDone={onDone}
          {...(missing !== undefined && { missing })}
        />
      }
    />
  );
}

/** How many settings stand in the line of their group. */
const MOST_IN_LINE = 3;

/** "Pigs 12, posts every 30 ft": the first settings of a group in a line. */
export function settingsWords<Key extends string>({ specs, values, units }: SettingsForm<Key>): string {
  return specs
    .flatMap((spec) => {
      const value = values[spec.key];
      return value === undefined ? [] : [`${spec.label} ${formatNumber(value)} ${settingUnit(spec, units)}`];
    })
    .slice(0, MOST_IN_LINE)
    .join(', ');
}
