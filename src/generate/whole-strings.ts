/**
 * Texts that esbuild has broken by a backslash at the end of a line, as sums of whole ones: an editor that indents what
 * is pasted would put spaces into the middle of them.
 */
import { parseAst } from 'rolldown/parseAst';

const BREAK = '\\\n';

type Node = { type: string; start: number; end: number; key?: Node; computed?: boolean } & Record<
  string,
  unknown
>;

export function wholeStrings(code: string): string {
  return brokenIn(parseAst(code) as unknown as Node)
    .sort((a, b) => b.start - a.start)
    .reduce((text, { start, end, isKey }) => {
      const literal = text.slice(start, end);
      const quote = literal.charAt(0);
      const sum = literal.split(BREAK).join(`${quote}+\n${quote}`);
      return text.slice(0, start) + (isKey ? `[${sum}]` : `(${sum})`) + text.slice(end);
    }, code);

  function brokenIn(node: Node, isKey = false): { start: number; end: number; isKey: boolean }[] {
    const { type, start, end, key, computed } = node;
    if (type === 'Literal') {
      return /^["']/.test(code.charAt(start)) && code.slice(start, end).includes(BREAK)
        ? [{ start, end, isKey }]
        : [];
    }
    return Object.values(node)
      .flat()
      .filter((child): child is Node => typeof (child as Node | null)?.type === 'string')
      .flatMap((child) => brokenIn(child, child === key && computed === false));
  }
}
