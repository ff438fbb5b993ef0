import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Answer, Answers, Form, Task } from '../../../shared/tasks/task';
import type { Book } from './use-book';

/** A task on the page: what was answered there, and the form that this and the sheet make. */
export interface TaskState<View extends object = object> {
  readonly answers: Answers;
  /** `undefined` takes an answer back. */
  readonly answer: (label: string, value: Answer | undefined) => void;
  readonly form: Form & View;
}

export function useTask<Plan, View extends object>(task: Task<Plan, View>, book: Book) {
  const [answers, setAnswers] = useState<Answers>({});
  const form = useMemo(() => task.read(book, answers), [task, book, answers]);
  const before = useRef(form.inSheet);
  // What has changed in the sheet takes the place of what was answered here before.
  useEffect(() => {
    const [was, is] = [before.current, form.inSheet];
    before.current = is;
    const isOld = (label: string): boolean => JSON.stringify(was[label]) !== JSON.stringify(is[label]);
    // A list or a map that the page has read itself stays.
    const isText = (label: string): boolean =>
      typeof answers[label] === 'string' || Array.isArray(answers[label]);
    const old = Object.keys(answers).filter((label) => label in was && isText(label) && isOld(label));
    if (old.length > 0) setAnswers((now) => without(now, old));
  }, [JSON.stringify(form.inSheet)]);
  const answer: TaskState['answer'] = (label, value) => setAnswers((now) => ({ ...now, [label]: value }));
  return { answers, answer, form };
}

function without(answers: Answers, labels: readonly string[]): Answers {
  return Object.fromEntries(Object.entries(answers).filter(([label]) => !labels.includes(label)));
}
