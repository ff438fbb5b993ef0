/** Turns what a failed call to the script left behind into a sentence that says what to do. */
import { withoutStop } from '../../shared/core/without-stop';

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

const REOPEN = 'open the sidebar again from the Sounder Sheet menu';

/**
 * Signs as they were seen in public issue threads and Google's troubleshooting page; the first that fits counts.
 * Wording of some is from memory.
 */
const CAUSES: readonly Cause[] = [
  {
    sign: /^No spreadsheet$/,
    sentence: `This page works only beside a spreadsheet. Open the spreadsheet and ${REOPEN}.`,
  },
  {
    sign: /PERMISSION_DENIED|reading from storage/i,
    sentence:
      'Google refused the call. This happens when several Google accounts are signed in at once. Sign out of the others, or open the spreadsheet in a private (incognito) window with one account only.',
  },
  {
    sign: /authori[sz]ation is required|not have permission|access denied|insufficient permission/i,
    sentence: `The script may not do this under your account. Check that you may edit this spreadsheet, ${REOPEN} and allow the script when Google asks.`,
  },
  {
    sign: /protected/i,
    sentence:
      'That part of the spreadsheet is protected. Ask its owner to let you edit it, or choose another place.',
  },
  {
    sign: /function not found|answerSidebar is not/i,
    sentence: `This page and the spreadsheet’s script are of different versions. Reload the spreadsheet, then ${REOPEN}.`,
  },
  {
    sign: /maximum execution time|timed out/i,
    sentence:
      'The spreadsheet took too long. Wait a minute and try again; a smaller list or fewer open tabs helps.',
    ran: true,
  },
  {
    sign: /too many (times|scripts|requests)|rate limit|quota/i,
    sentence: 'Google says the script has been called too often. Wait a minute and try again.',
  },
  {
    sign: /server error|internal error|service .*unavailable/i,
    sentence: 'Google had a fault on its side. Wait a little and try again.',
    ran: true,
  },
];

const LOST =
  'The connection to the spreadsheet was lost. Check the internet connection, then try again; if it stays lost, reload the spreadsheet.';
const NO_ANSWER = 'The spreadsheet has not answered. Check the internet connection and try again.';
const NOT_WRITTEN = ' Nothing was written.';
const MAY_HAVE_WRITTEN = ' Look at the sheet first: the change may have been made all the same.';

export function failureSentence(error: unknown, { writes, online }: Circumstances): string {
  const message = messageOf(error);
  const hint = writes ? MAY_HAVE_WRITTEN : NOT_WRITTEN;
  if (/^No answer in time$/.test(message)) return (online ? NO_ANSWER : LOST) + hint;
  if (!online || /NetworkError|connection failure|HTTP 0|Failed to fetch/i.test(message)) return LOST + hint;
  const cause = CAUSES.find(({ sign }) => sign.test(message));
  if (cause) return cause.sentence + (cause.ran ? hint : NOT_WRITTEN);
  const told = message === '' ? 'without saying why' : `with: “${withoutStop(message)}”`;
  return `The spreadsheet’s script stopped ${told}. Try again; if it stays, reload the spreadsheet and ${REOPEN}.${hint}`;
}

function messageOf(error: unknown): string {
  if (error instanceof Error) return error.message;
  if (typeof error === 'object' && error !== null && 'message' in error) return String(error.message);
  return typeof error === 'string' ? error : '';
}
