const LONGEST_LINE_OCTETS = 75;

/**
 * Folds the lines of a calendar file anew by octets, as RFC 5545, 3.1 wants: the library counts characters, and may
 * cut through one that takes two units.
 */
export function foldLines(calendar: string): string {
  return calendar
    .replace(/\r\n[ \t]/g, '')
    .split('\r\n')
    .map(foldLine)
    .join('\r\n');
}

function foldLine(line: string): string {
  let folded = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > LONGEST_LINE_OCTETS) {
      folded += '\r\n ';
      octets = 1;
    }
    folded += character;
    octets += size;
  }
  return folded;
}

/** Octets of a character in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
