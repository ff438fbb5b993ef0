/**
 * How deep brackets stand inside one another in JSON text, without parsing it: some parsers fail badly on a
 * million brackets. Text in quotes does not count.
 */
export function jsonDepth(text: string): number {
  let depth = 0;
  let deepest = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (quoted) {
      if (sign === '\\') i++;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '[' || sign === '{') deepest = Math.max(deepest, ++depth);
    else if (sign === ']' || sign === '}') depth--;
  }
  return deepest;
}

/** How deep elements stand inside one another in XML text. Comments and CDATA do not count. */
export function xmlDepth(text: string): number {
  let depth = 0;
  let deepest = 0;
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at)) {
    const skipped = pastUnparsed(text, at);
    if (skipped !== undefined) {
      at = skipped;
      continue;
    }
    const end = text.indexOf('>', at);
    if (end < 0) break;
    if (text[at + 1] === '/') depth--;
    else if (text[end - 1] !== '/' && text[at + 1] !== '?' && text[at + 1] !== '!') {
      deepest = Math.max(deepest, ++depth);
    }
    at = end + 1;
  }
  return deepest;
}

function pastUnparsed(text: string, at: number): number | undefined {
  if (text.startsWith('<!--', at)) return past(text, '-->', at);
  if (text.startsWith('<![CDATA[', at)) return past(text, ']]>', at);
  return undefined;
}

function past(text: string, sign: string, from: number): number {
  const end = text.indexOf(sign, from);
  return end < 0 ? text.length : end + sign.length;
}
