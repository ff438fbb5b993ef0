/**
 * What is typed into the grid, as Sheets accepts it: `;` between arguments in every locale, doubled quotes inside a
 * text, only text in cells formatted as plain text, one percent sign, days with dots where the locale writes them so.
 * The engine's editor hands over US notation with whatever it did not understand left as typed.
 */
import type { Book } from '../engine/book';
import type { Engine } from '../engine/engine';
import { toEngineFormula } from '../engine/formula-text';
import { literalText, PLAIN_TEXT_FORMAT, typedIntoCell } from '../engine/typed-text';
import { linkOf } from '../xlsx/links';

type Update = { sheetId: string; row: number; col: number; content?: string; format?: string };
type Dispatch = (type: string, payload: Update) => unknown;
/** The editor's text as typed, and what the engine made of it. */
export type Typing = { typed: string; content: string };

let lastTyping: Typing | undefined;

/** Keeps what the editor's text was before the engine turned it into US notation. Once, before the first grid. */
export function noteTyping(engine: Engine): void {
  type Editor = { _currentContent: string; getCurrentCanonicalContent(): string };
  const editor = engine.stores.CellComposerStore.prototype as unknown as Editor;
  const canonical = editor.getCurrentCanonicalContent;
  editor.getCurrentCanonicalContent = function noted(this: Editor): string {
    const content = canonical.call(this);
    lastTyping = { typed: this._currentContent, content };
    return content;
  };
}

type Edited = (place: Place, typed: string, oldValue: unknown) => void;

export function acceptSheetsTyping(book: Book, thisYear: () => number, edited: Edited): void {
  const model = book.model as unknown as { dispatch: Dispatch };
  const dispatch = model.dispatch;
  model.dispatch = (type, payload) => {
    if (type !== 'UPDATE_CELL' || !payload.content) return dispatch(type, payload);
    const typing = lastTyping?.content === payload.content ? lastTyping : undefined;
    lastTyping = undefined;
    const oldValue = book.cell(payload.sheetId, payload.row, payload.col).value;
    const entry = sheetsEntry(book, payload, payload.content, typing, thisYear());
    const result = dispatch(type, { ...payload, ...entry });
    if (typing) edited(payload, typing.typed, oldValue);
    else if (isTick(book, payload)) edited(payload, payload.content, oldValue);
    return result;
  };
}

/** A box that was clicked: no text was typed. */
function isTick(book: Book, { sheetId, row, col, content = '' }: Update): boolean {
  const rule = book.model.getters.getValidationRuleForCell({ sheetId, row, col });
  return rule?.criterion.type === 'isBoolean' && /^(TRUE|FALSE)$/.test(content);
}

type Place = Pick<Update, 'sheetId' | 'row' | 'col'>;

export function sheetsEntry(
  book: Book,
  { sheetId, row, col }: Place,
  content: string,
  typing: Typing | undefined,
  thisYear: number,
): { content: string; format?: string } {
  const ownFormat = book.ownFormat(sheetId, row, col);
  if (ownFormat === PLAIN_TEXT_FORMAT) return literalText(content.replace(/^'/, ''));
  if (content.startsWith('=')) return { content: toEngineFormula(content, false) ?? content };
  if (!typing) return { content };
  // The editor of a percent cell adds a sign to the first digit, and the person may type another.
  const typed = typing.typed.replace(/%\s*%$/, '%');
  const isDayWithDots = book.locale.dateFormat.includes('.') && /^\s*\d{1,4}\.\d/.test(typed);
  if (typed !== typing.typed || isDayWithDots) return typedIntoCell(typed, ownFormat, book.locale, thisYear);
  return linkOf(typed) ? literalText(typed) : { content };
}
