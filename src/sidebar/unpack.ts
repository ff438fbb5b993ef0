/**
 * Starts the page: unpacks its script, which the build has deflated to a third, and runs it as an element of the page,
 * as if it stood there. The planner's worker is made from that element's text (planner/run-plan.ts).
 */
import { NOT_STARTED, TOO_OLD } from './words';

/** zlib's format in base64, with - and _ for + and /: Google's page service takes // for a comment. */
declare const PACKED: readonly string[];

start(document.getElementById('app') as HTMLElement);

async function start(root: HTMLElement): Promise<void> {
  if (typeof DecompressionStream === 'undefined') {
    root.textContent = TOO_OLD;
    return;
  }
  const script = document.createElement('script');
  script.textContent = await inflated(PACKED.join('')).catch(() => '');
  document.body.append(script);
  if (!root.hasChildNodes()) root.textContent = NOT_STARTED;
}

/** Written and read by hand: through a Blob or a Response the same takes some milliseconds more. */
async function inflated(packed: string): Promise<string> {
  const letters = atob(packed.replace(/-/g, '+').replace(/_/g, '/'));
  const bytes = new Uint8Array(letters.length);
  for (let i = 0; i < bytes.length; i++) bytes[i] = letters.charCodeAt(i);
  const stream = new DecompressionStream('deflate');
  const writer = stream.writable.getWriter();
  const written = writer.write(bytes).then(() => writer.close());
  const reader = stream.readable.getReader();
  const decoder = new TextDecoder();
  let text = '';
  for (let part = await reader.read(); !part.done; part = await reader.read())
    text += decoder.decode(part.value, { stream: true });
  await written;
  return text;
}
