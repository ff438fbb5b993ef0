import { type ComponentChildren, toChildArray } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Sentence } from './sentence';

const SIGNS = { problem: 'Problem', warning: 'Look out', done: 'Done', good: 'Good', note: 'Note' } as const;

interface Props {
  readonly kind: keyof typeof SIGNS;
  /** What was pressed for has come: whoever reads by keyboard or ear goes on from here. */
  readonly takeFocus?: boolean;
  readonly children: ComponentChildren;
}

/** A boxed sentence whose kind is said in words, not only in colour. */
export function Notice({ kind, takeFocus = false, children }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (takeFocus) box.current?.focus();
  }, []);
  return (
    <div
      ref={box}
      class={`notice ${kind}`}
      role={kind === 'problem' ? 'alert' : undefined}
      tabIndex={takeFocus ? -1 : undefined}
    >
      <strong>{SIGNS[kind]}: </strong>
      {toChildArray(children).map((child) => (typeof child === 'string' ? <Sentence text={child} /> : child))}
    </div>
  );
}

interface SentencesProps {
  readonly kind: Props['kind'];
  /** Before them. */
  readonly lead?: string;
  readonly sentences: readonly string[];
}

/** Sentences in one box; no box where there are none. */
export function SentencesNotice({ kind, lead, sentences }: SentencesProps) {
  if (sentences.length === 0) return null;
  if (sentences.length === 1)
    return <Notice kind={kind}>{[lead, sentences[0]].filter(Boolean).join(' ')}</Notice>;
  return (
    <Notice kind={kind}>
      {lead}
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>
            <Sentence text={sentence} />
          </li>
        ))}
      </ul>
    </Notice>
  );
}
