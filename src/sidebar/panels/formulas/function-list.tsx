import { useId } from 'preact/hooks';
import { CATALOGUE } from '../../../../shared/catalogue';
import type { AnyEntry } from '../../../../shared/catalogue/define';
import { findFunctions } from './find-functions';
import * as words from './words';

interface Props {
  readonly search: string;
  readonly onSearch: (search: string) => void;
  readonly onChoose: (entry: AnyEntry) => void;
}

/** Search box and all functions that fit, by topic. */
export function FunctionList({ search, onSearch, onChoose }: Props) {
  const id = useId();
  const groups = findFunctions(CATALOGUE, search);
  const found = groups.reduce((sum, { entries }) => sum + entries.length, 0);
  return (
    <>
      <label for={id}>{words.WHAT_TO_KNOW}</label>
      <input
        id={id}
        type="search"
        autocomplete="off"
        value={search}
        aria-describedby={`${id}-count`}
        onInput={(event) => onSearch(event.currentTarget.value)}
      />
      <p id={`${id}-count`} class="hint" aria-live="polite">
        {found === 0 ? words.NOTHING_FOUND : `${found} to choose from`}
      </p>
      {groups.map((group) => (
        <section key={group.topic} aria-labelledby={`topic-${group.topic}`}>
          <h2 id={`topic-${group.topic}`}>{group.title}</h2>
          <ul class="functions">
            {group.entries.map((entry) => (
              <li key={entry.name}>
                <button type="button" class="function" onClick={() => onChoose(entry)}>
                  <span>{entry.summary}</span> <code>{entry.name}</code>
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
