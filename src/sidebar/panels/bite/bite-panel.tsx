/** "Will it bite": volts at the end of each line, and the log of fence walks. */
import { useState } from 'preact/hooks';
import { Choices } from '../../parts/choices';
import { WithBook } from '../../parts/with-book';
import { BiteSteps } from './bite-steps';
import { WalkSteps } from './walk-steps';

const VIEWS = [
  { value: 'plan', text: 'A fence as planned' },
  { value: 'walk', text: 'What I measured on a fence walk' },
];

export function BitePanel() {
  const [view, setView] = useState('plan');
  return (
    <WithBook>
      {(book) => (
        <>
          <Choices legend="Which volts?" value={view} options={VIEWS} onChange={setView} />
          {view === 'plan' ? <BiteSteps book={book} /> : <WalkSteps book={book} />}
        </>
      )}
    </WithBook>
  );
}
