import type { PrivateFound } from '../../../../shared/tasks/share/find-private';
import { KIND_WORDS, PRIVATE_KINDS } from '../../../../shared/tasks/share/private-columns';
import { count } from '../../parts/day-words';

/** What is private, by kind. */
export function PrivateList({ found }: { found: readonly PrivateFound[] }) {
  if (found.length === 0) return <p>Nothing private was found in the tables of this tool.</p>;
  return (
    <ul>
      {PRIVATE_KINDS.map((kind) => {
        const ofKind = found.filter((one) => one.kind === kind);
        if (ofKind.length === 0) return null;
        return (
          <li key={kind}>
            <strong>{KIND_WORDS[kind]}</strong>
            <ul>
              {ofKind.map(({ what, filled, area }) => (
                <li key={`${what} ${area.row}`}>
                  {what}: {count(filled, 'cell')}, tab “{area.tab}”
                </li>
              ))}
            </ul>
          </li>
        );
      })}
    </ul>
  );
}
