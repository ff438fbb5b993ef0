/** Tells what of the opened file would be missing in a saved one: in a line above the grid, and again before saving. */
import { element } from './page-globals';
import { measureGrid } from './script-pages';

let sentence = '';

/** Shows the loss; '' takes the line away. */
export function tellFileLoss(text: string): void {
  sentence = text;
  showLine(text);
}

function showLine(text: string): void {
  element('file-loss-text').textContent = text;
  element('file-loss').classList.toggle('file-loss-shown', text !== '');
  element('file-loss-hide').hidden = text === '';
  measureGrid();
}

export function connectFileLoss(): void {
  element('file-loss-hide').addEventListener('click', () => showLine(''));
}

/** Whether to save: asks only where something would be missing. */
export function mayBeSaved(): Promise<boolean> {
  if (sentence === '') return Promise.resolve(true);
  const question = element<HTMLDialogElement>('save-question');
  element('save-question-text').textContent = `${sentence} The file that you opened stays as it is.`;
  question.returnValue = '';
  question.showModal();
  return new Promise((resolve) => {
    question.addEventListener('close', () => resolve(question.returnValue === 'save'), { once: true });
  });
}
