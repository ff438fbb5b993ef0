/**
 * Formulas typed into the grid, as Sheets accepts them: `;` between arguments in every locale, doubled quotes inside
 * a text. The engine's editor hands over US notation with whatever it did not understand left as typed.
 */
import type { Book } from '../engine/book';
import { toEngineFormula } from '../engine/formula-text';

type Dispatch = (type: string, payload: { content?: string }) => unknown;

export function acceptSheetsFormulas(book: Book): void {
  const model = book.model as unknown as { dispatch: Dispatch };
  const dispatch = model.dispatch;
  model.dispatch = (type, payload) => {
    const { content } = payload ?? {};
    if (type !== 'UPDATE_CELL' || !content?.startsWith('=')) return dispatch(type, payload);
    return dispatch(type, { ...payload, content: toEngineFormula(content, false) ?? content });
  };
}
