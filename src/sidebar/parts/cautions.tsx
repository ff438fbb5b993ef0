import { Notice } from './notice';

/** Warnings that stand where their numbers are used. "Look out:" is said by the box. */
export function Cautions({ sentences }: { sentences: readonly string[] }) {
  return (
    <Notice kind="warning">
      {sentences.map((sentence, at) => {
        const words = sentence.replace(/^Look out: /, '');
        const shown = words.charAt(0).toUpperCase() + words.slice(1);
        return at === 0 ? shown : <p key={sentence}>{shown}</p>;
      })}
    </Notice>
  );
}
