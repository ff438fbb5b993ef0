import { type Advice, ESCAPE_STEPS } from '../../../../shared/tasks/training/words';
import * as words from './words';

export function EscapeSteps() {
  return (
    <>
      <h2>A pig is out</h2>
      <AdviceList steps={ESCAPE_STEPS} />
    </>
  );
}

export function AdviceList({ steps }: { steps: readonly Advice[] }) {
  return (
    <>
      <ol>
        {steps.map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <details class="rests">
        <summary>{words.WHY}</summary>
        <ol>
          {steps.map(({ text, source }) => (
            <li key={text}>{source}</li>
          ))}
        </ol>
      </details>
    </>
  );
}
