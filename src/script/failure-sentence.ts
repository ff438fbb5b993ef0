import { withoutStop } from '../../shared/core/without-stop';
import { Told } from './port';

/** Of a failure that the action itself did not tell: it came before the action changed anything, or was taken back. */
export function untoldFailure(error: unknown): string {
  return error instanceof Told ? error.message : `${failureSentence(error)} Nothing was written.`;
}

/** Failures of the sheet service in plain words, with what to do. */
export function failureSentence(error: unknown): string {
  if (error instanceof Told) return error.message;
  const message = withoutStop(error instanceof Error ? error.message : String(error));
  if (/protected/i.test(message)) {
    return 'That part of the sheet is protected against changes. Ask its owner to let you edit it, or write to a new tab.';
  }
  if (/typed column/i.test(message)) {
    return 'These cells belong to a table with typed columns, which takes no formats. Choose Table > Convert to unformatted data in its menu, or another place.';
  }
  if (/permission|not authori[sz]ed|authori[sz]ation/i.test(message)) {
    return `Google did not allow it (${message}). Open the menu Sounder Sheet once and allow access; if you can only view this file, ask its owner for edit access or make a copy.`;
  }
  if (/too many|quota|limit exceeded|rate/i.test(message)) {
    return 'Google asks to slow down: too many requests in a short time. Wait a minute and try again.';
  }
  if (/execution time|timed out|timeout/i.test(message)) {
    return 'Google stopped the script because it took too long. Close other files with scripts and try again.';
  }
  return `The spreadsheet refused: ${message}. Look at the sheet, then try again.`;
}
