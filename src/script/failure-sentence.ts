import { TOO_MANY_CALLS } from '../../shared/block/words';
import { withoutStop } from '../../shared/core/without-stop';
import { Told } from './port';
import * as words from './words';

/** Of a failure that the action itself did not tell: it came before the action changed anything, or was taken back. */
export function untoldFailure(error: unknown): string {
  return error instanceof Told ? error.message : `${failureSentence(error)} Nothing was written.`;
}

/** Failures of the sheet service in plain words, with what to do. */
export function failureSentence(error: unknown): string {
  if (error instanceof Told) return error.message;
  const message = withoutStop(error instanceof Error ? error.message : String(error));
  if (/protected/i.test(message)) {
    return words.SHEET_PROTECTED;
  }
  if (/typed column/i.test(message)) {
    return words.TYPED_COLUMNS;
  }
  if (/permission|not authori[sz]ed|authori[sz]ation/i.test(message)) {
    return words.notAllowed(message);
  }
  if (/too many|quota|limit exceeded|rate/i.test(message)) {
    return TOO_MANY_CALLS;
  }
  if (/execution time|timed out|timeout/i.test(message)) {
    return words.TOOK_TOO_LONG;
  }
  return words.refused(message);
}
