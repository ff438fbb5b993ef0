import type { ComponentChildren } from 'preact';

/** A named box that scrolls by itself; it takes the focus so that the keyboard can scroll it too. */
export function ScrollRegion(props: { label: string; class?: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling box must be reachable by keyboard
    <section class={`scroll ${props.class ?? ''}`} tabIndex={0} aria-label={props.label}>
      {props.children}
    </section>
  );
}
