import type { PrivateFound } from '../../../../shared/tasks/share/find-private';
import { KIND_WORDS, PRIVATE_KINDS } from '../../../../shared/tasks/share/private-columns';
import { count } from '../../parts/day-words';
import * as words from './words';

/** What is private, by kind. */
export function PrivateList({ found }: { found: readonly PrivateFound[] }) {
  if (found.length === 0) return <p>{words.NOTHING_PRIVATE}</p>;
  return (
    <>
      {PRIVATE_KINDS.map((kind) => {
        const ofKind = cellsByWhat(found.filter((one) => one.kind === kind));
        if (ofKind.size === 0) return null;
        return (
          <details key={kind} class="rests">
            <summary>{KIND_WORDS[kind]}</summary>
            <ul>
              {[...ofKind].map(([what, filled]) => (
                <li key={what}>
                  {what}: {count(filled, 'cell')}
                </li>
              ))}
            </ul>
          </details>
        );
      })}
    </>
  );
}

/** A column with gaps is found piece by piece. */
function cellsByWhat(found: readonly PrivateFound[]): ReadonlyMap<string, number> {
  const cells = new Map<string, number>();
  for (const { what, filled, area } of found) {
    const key = `${what}, tab “${area.tab}”`;
    cells.set(key, (cells.get(key) ?? 0) + filled);
  }
  return cells;
}
