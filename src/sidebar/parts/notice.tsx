import type { ComponentChildren } from 'preact';

const SIGNS = { problem: 'Problem', warning: 'Look out', done: 'Done', note: 'Note' } as const;

/** A boxed sentence whose kind is said in words, not only in colour. */
export function Notice(props: { kind: keyof typeof SIGNS; id?: string; children: ComponentChildren }) {
  return (
    <div id={props.id} class={`notice ${props.kind}`} role={props.kind === 'problem' ? 'alert' : undefined}>
      <strong>{SIGNS[props.kind]}: </strong>
      {props.children}
    </div>
  );
}
