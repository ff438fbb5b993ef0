/**
 * What is typed into the grid, as Sheets accepts it: `;` between arguments in every locale, doubled quotes inside a
 * text, and only text in cells formatted as plain text. The engine's editor hands over US notation with whatever it
 * did not understand left as typed.
 */
import type { Book } from '../engine/book';
import { toEngineFormula } from '../engine/formula-text';
import { literalText, PLAIN_TEXT_FORMAT } from '../engine/typed-text';

type Update = { sheetId: string; row: number; col: number; content?: string };
type Dispatch = (type: string, payload: Update) => unknown;

export function acceptSheetsTyping(book: Book): void {
  const model = book.model as unknown as { dispatch: Dispatch };
  const dispatch = model.dispatch;
  model.dispatch = (type, payload) => {
    if (type !== 'UPDATE_CELL' || !payload.content) return dispatch(type, payload);
    return dispatch(type, { ...payload, content: sheetsContent(book, payload, payload.content) });
  };
}

function sheetsContent(book: Book, { sheetId, row, col }: Update, content: string): string {
  if (book.ownFormat(sheetId, row, col) === PLAIN_TEXT_FORMAT) {
    return literalText(content.replace(/^'/, '')).content;
  }
  return content.startsWith('=') ? (toEngineFormula(content, false) ?? content) : content;
}
