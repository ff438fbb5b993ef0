import type { AnyEntry } from '../../../../shared/catalogue/define';
import { certaintyOf, signature } from '../../../../shared/catalogue/describe';
import { SOURCES } from '../../../../shared/sources';

/** How the number is worked out, and what it rests on. */
export function FunctionHelp({ entry }: { entry: AnyEntry }) {
  return (
    <details>
      <summary>How it is worked out</summary>
      <p>
        <code class="wrap">{signature(entry)}</code>
      </p>
      <p>{entry.formula}</p>
      <h3>What it rests on</h3>
      <ul>
        {entry.sources.map((use) => (
          <li key={use.source + use.covers}>
            {use.covers}: <strong>{certaintyOf(use)}</strong>. {SOURCES[use.source].citation}
          </li>
        ))}
      </ul>
      {entry.cautions && (
        <>
          <h3>Look out</h3>
          <ul>
            {entry.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}
