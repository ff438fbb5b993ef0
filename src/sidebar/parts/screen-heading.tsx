import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** The heading of a screen. On arrival it takes the focus, so that readers start at the top. */
export function ScreenHeading(props: { takeFocus?: boolean; children: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  // At once: an effect that runs later takes the focus from a field that is being typed into.
  useLayoutEffect(() => {
    if (props.takeFocus) heading.current?.focus();
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1}>
      {props.children}
    </h1>
  );
}
