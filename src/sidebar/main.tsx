/** Starts the page in the sidebar; the same script in a worker starts the planner alone. */
import { render } from 'preact';
import { App } from './app';
import { waitAsWorker } from './planner/plan-worker';

if (typeof document === 'undefined') waitAsWorker();
else {
  const root = document.getElementById('app');
  if (root) render(<App />, root);
}
