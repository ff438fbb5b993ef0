/**
 * The page's only way to the spreadsheet. Every call goes out as JSON text, comes back as JSON text, is checked
 * on arrival, and every failure becomes a sentence that says what to do.
 */
import * as v from 'valibot';
import { CALLS, type CallName, Envelope, type Reply, type Request } from '../../shared/contract';
import { failureSentence } from './failure-sentence';
import * as words from './words';

interface Runner {
  withSuccessHandler(handler: (reply: unknown) => void): Runner;
  withFailureHandler(handler: (error: unknown) => void): Runner;
  answerSidebar(call: string, request: string): void;
}

declare const google: { script: { run: Runner } } | undefined;

/** A failed call. The message is meant for the grower. */
export class ServerFailure extends Error {}

/** How long the page waits before it says so. Judgement: reads take a second or two, a big table perhaps ten. */
const PATIENCE_MILLISECONDS = { read: 60_000, write: 150_000 };

const WRITES: readonly CallName[] = ['writeBlock', 'startSample', 'clearInCopy', 'changeCells'];

let writes = 0;

/** How often the page has had something written: what may be taken back is the last of it. */
export function writesSoFar(): number {
  return writes;
}

/** Asks the script. Rejects only with a ServerFailure. */
export async function ask<Name extends CallName>(name: Name, request: Request<Name>): Promise<Reply<Name>> {
  const isWrite = WRITES.includes(name);
  const text = await send(name, JSON.stringify(request), isWrite);
  const envelope = v.safeParse(Envelope, parse(text));
  const otherVersion = words.OTHER_VERSION + (isWrite ? words.LOOK_FIRST : '');
  if (!envelope.success) throw new ServerFailure(otherVersion);
  if (!envelope.output.ok) throw new ServerFailure(envelope.output.error);
  if (isWrite) writes += 1;
  const reply = v.safeParse(CALLS[name].reply, envelope.output.data);
  if (!reply.success) throw new ServerFailure(otherVersion);
  return reply.output as Reply<Name>;
}

function parse(text: unknown): unknown {
  if (typeof text !== 'string') return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function send(name: CallName, request: string, writes: boolean): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const fail = (error: unknown): void => {
      clearTimeout(timer);
      reject(new ServerFailure(failureSentence(error, { writes, online: navigator.onLine })));
    };
    const timer = setTimeout(
      () => fail(new Error('No answer in time')),
      writes ? PATIENCE_MILLISECONDS.write : PATIENCE_MILLISECONDS.read,
    );
    if (typeof google === 'undefined') {
      fail(new Error('No spreadsheet'));
      return;
    }
    try {
      google.script.run
        .withSuccessHandler((reply) => {
          clearTimeout(timer);
          resolve(reply);
        })
        .withFailureHandler(fail)
        .answerSidebar(name, request);
    } catch (error) {
      fail(error);
    }
  });
}
