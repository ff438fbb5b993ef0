/** "Train the pigs": the pen, the log, and what to do when one gets out. */
import { useState } from 'preact/hooks';
import { Choices } from '../../parts/choices';
import { WithBook } from '../../parts/with-book';
import { EscapeSteps } from './escape-steps';
import { LogSteps } from './log-steps';
import { PenSteps } from './pen-steps';

const VIEWS = [
  { value: 'pen', text: 'The training pen' },
  { value: 'log', text: 'The training log' },
  { value: 'out', text: 'A pig is out' },
];

export function TrainingPanel() {
  const [view, setView] = useState('pen');
  const choice = <Choices legend="What about?" value={view} options={VIEWS} onChange={setView} />;
  if (view === 'out') {
    // Nothing is read first: whoever needs this is in a hurry.
    return (
      <>
        {choice}
        <EscapeSteps />
      </>
    );
  }
  return (
    <>
      {choice}
      <WithBook>
        {(book, reread) =>
          view === 'pen' ? <PenSteps book={book} /> : <LogSteps book={book} onReread={reread} />
        }
      </WithBook>
    </>
  );
}
