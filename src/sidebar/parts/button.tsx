import type { ComponentChildren } from 'preact';

interface Props {
  /** main: the one blue-green step forward of a section; quiet: looks like a link; plain otherwise. */
  readonly kind?: 'main' | 'plain' | 'quiet';
  readonly disabled?: boolean;
  readonly describedBy?: string;
  readonly label?: string;
  /** It opens something, which is open or not. */
  readonly expanded?: boolean;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/** A button. Where it is off it stays in the tab order, so that keyboard users do not lose their place. */
export function Button({
  kind = 'plain',
  disabled = false,
  describedBy,
  label,
  expanded,
  onPress,
  children,
}: Props) {
  return (
    <button
      type="button"
      class={`button ${kind}`}
      aria-disabled={disabled ? 'true' : undefined}
      aria-describedby={describedBy}
      aria-label={label}
      aria-expanded={expanded}
      onClick={() => {
        if (!disabled) onPress();
      }}
    >
      {children}
    </button>
  );
}
