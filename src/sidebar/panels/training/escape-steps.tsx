import { type Advice, ESCAPE_STEPS } from '../../../../shared/tasks/training/training-advice';

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
    <ol class="advice">
      {steps.map(({ text, source }) => (
        <li key={text}>
          {text} <span class="hint">({source})</span>
        </li>
      ))}
    </ol>
  );
}
