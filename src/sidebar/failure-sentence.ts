/** Turns what a failed call to the script left behind into a sentence that says what to do. */

import { TOO_MANY_CALLS } from '../../shared/block/words';
import { withoutStop } from '../../shared/core/without-stop';
import * as words from './words';

interface Circumstances {
  /** The call was to change the sheet, so that it may have done so although no answer came. */
  readonly writes: boolean;
  readonly online: boolean;
}

interface Cause {
  readonly sign: RegExp;
  readonly sentence: string;
  /** The script may have been under way. */
  readonly ran?: true;
}

/**
 * Signs as they were seen in public issue threads and Google's troubleshooting page; the first that fits counts.
 * Wording of some is from memory.
 */
const CAUSES: readonly Cause[] = [
  {
    sign: /^No spreadsheet$/,
    sentence: words.NO_SPREADSHEET,
  },
  {
    sign: /PERMISSION_DENIED|reading from storage/i,
    sentence: words.TWO_ACCOUNTS,
  },
  {
    sign: /authori[sz]ation is required|not have permission|access denied|insufficient permission/i,
    sentence: words.NOT_ALLOWED,
  },
  {
    sign: /protected/i,
    sentence: words.PROTECTED,
  },
  {
    sign: /function not found|answerSidebar is not/i,
    sentence: words.OTHER_VERSION,
  },
  {
    sign: /maximum execution time|timed out/i,
    sentence: words.TOO_SLOW,
    ran: true,
  },
  {
    sign: /too many (times|scripts|requests)|rate limit|quota/i,
    sentence: TOO_MANY_CALLS,
  },
  {
    sign: /server error|internal error|service .*unavailable/i,
    sentence: words.GOOGLES_FAULT,
    ran: true,
  },
];

export function failureSentence(error: unknown, { writes, online }: Circumstances): string {
  const message = messageOf(error);
  const hint = writes ? words.LOOK_FIRST : words.NOTHING_WRITTEN;
  if (/^No answer in time$/.test(message)) return (online ? words.NO_ANSWER : words.CONNECTION_LOST) + hint;
  if (!online || /NetworkError|connection failure|HTTP 0|Failed to fetch/i.test(message))
    return words.CONNECTION_LOST + hint;
  const cause = CAUSES.find(({ sign }) => sign.test(message));
  if (cause) return cause.sentence + (cause.ran ? hint : words.NOTHING_WRITTEN);
  const told = message === '' ? 'without saying why' : `with: “${withoutStop(message)}”`;
  return words.stopped(told) + hint;
}

function messageOf(error: unknown): string {
  if (error instanceof Error) return error.message;
  if (typeof error === 'object' && error !== null && 'message' in error) return String(error.message);
  return typeof error === 'string' ? error : '';
}
