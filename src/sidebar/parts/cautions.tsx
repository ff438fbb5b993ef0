import { Notice } from './notice';

/** Warnings that stand where their numbers are used: the first in sight, the others a tap away. */
export function Cautions({ sentences }: { sentences: readonly string[] }) {
  const [first, ...others] = sentences;
  if (first === undefined) return null;
  return (
    <Notice kind="warning">
      {first}
      {others.length > 0 && (
        <details class="rests">
          <summary>More to look out for</summary>
          {others.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </details>
      )}
    </Notice>
  );
}
