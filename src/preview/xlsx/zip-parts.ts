/** The text parts of a zip file such as an .xlsx: what the file library leaves out can still be seen in them. */

const END_RECORD = 0x06054b50;
const END_RECORD_LENGTH = 22;
const ENTRY = 0x02014b50;
const ENTRY_LENGTH = 46;
const LOCAL_HEADER_LENGTH = 30;
const DEFLATED = 8;

/** Parts whose names end in .xml or .rels as text, all others as ''. Layout: PKWARE's APPNOTE.TXT, 4.3. */
export async function zipParts(bytes: Uint8Array): Promise<Map<string, string>> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endRecordAt(view);
  const count = view.getUint16(end + 10, true);
  const parts = new Map<string, string>();
  let at = view.getUint32(end + 16, true);
  for (let index = 0; index < count; index += 1) {
    if (view.getUint32(at, true) !== ENTRY) throw new Error('The list of parts in the zip file is broken.');
    const nameLength = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + ENTRY_LENGTH, at + ENTRY_LENGTH + nameLength));
    parts.set(name, /\.(xml|rels)$/i.test(name) ? await textOf(bytes, view, at) : '');
    at += ENTRY_LENGTH + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return parts;
}

function endRecordAt(view: DataView): number {
  for (let at = view.byteLength - END_RECORD_LENGTH; at >= 0; at -= 1) {
    if (view.getUint32(at, true) === END_RECORD) return at;
  }
  throw new Error('This is no zip file.');
}

async function textOf(bytes: Uint8Array, view: DataView, entry: number): Promise<string> {
  const method = view.getUint16(entry + 10, true);
  const length = view.getUint32(entry + 20, true);
  const local = view.getUint32(entry + 42, true);
  const start =
    local + LOCAL_HEADER_LENGTH + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  const packed = new Blob([bytes.slice(start, start + length)]);
  if (method !== DEFLATED) return packed.text();
  return new Response(packed.stream().pipeThrough(new DecompressionStream('deflate-raw'))).text();
}
