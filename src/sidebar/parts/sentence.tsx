import { columnNumber } from '../../../shared/block/column-number';
import { usePage } from '../page';
import { ask } from '../server';
import { useWork } from './use-work';
import * as words from './words';

/** What may be a link: a title in quotation marks; a cell with its tab, as `cellOnTab` writes it. */
const LINKS = /(“[^”]+”|(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_]*)![A-Z]{1,3}\d+)/u;
const CELL = /^(.+)!([A-Z]+)(\d+)$/;

/** A sentence in which each cell that it names is a link that selects it, and each task one that opens it. */
export function Sentence({ text }: { text: string }) {
  const { say, titles, open } = usePage();
  const work = useWork();
  const select = (cell: string): void =>
    work.start(async () => {
      const [, tab = '', column = '', row] = CELL.exec(cell) ?? [];
      const name = tab.replace(/^'|'$/g, '').replace(/''/g, "'");
      await ask('showCell', { tab: name, row: Number(row), column: columnNumber(column) });
      say(words.selected(cell));
    });
  return (
    <>
      {text.split(LINKS).map((part) => {
        const title = part.replace(/^“|”$/g, '');
        const isTask = title !== part && titles.includes(title);
        if (!isTask && !CELL.test(part)) return part;
        return (
          <button
            type="button"
            class="link"
            title={isTask ? undefined : words.SELECT_IT}
            onClick={() => (isTask ? open(title) : select(part))}
          >
            {title}
          </button>
        );
      })}
      {work.problem && <span role="alert"> {work.problem}</span>}
    </>
  );
}

/** Sentences in small print, one below the other. */
export function Hints({ sentences }: { sentences: readonly string[] }) {
  return (
    <>
      {sentences.map((sentence) => (
        <p class="hint" key={sentence}>
          <Sentence text={sentence} />
        </p>
      ))}
    </>
  );
}
