/** All sentences of a room stand in its words.ts, and each stands once. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseAst } from 'rolldown/parseAst';
import { describe, expect, it } from 'vitest';

const ROOMS = ['block', 'lists', 'plan', 'table', 'tasks'].map((room) => `shared/${room}`);
/** A list of what is taken for true about Google, a sentence each: data with their sources, and no room's words. */
const DATA = 'src/script/assumptions.ts';

interface Node {
  readonly type: string;
}

const files = [...ROOMS, 'src/sidebar', 'src/script']
  .flatMap((room) => readdirSync(room, { recursive: true, encoding: 'utf8' }).map((file) => join(room, file)))
  .filter((file) => /\.tsx?$/.test(file) && file !== DATA);
const isOfWords = (file: string): boolean => basename(file) === 'words.ts';

describe('sentences', () => {
  it('stand in the words.ts of their room', () => {
    const found = files.filter((file) => !isOfWords(file)).flatMap((file) => sentencesIn(file));
    expect(found).toEqual([]);
  });

  it('stand in one room only', () => {
    const all = files.filter(isOfWords).flatMap((file) => sentencesIn(file));
    const [texts, places] = [all.map(({ text }) => text), all.map(({ file, text }) => `${file}: ${text}`)];
    expect(places.filter((_, i) => texts.indexOf(texts[i]!) !== i)).toEqual([]);
    expect(all.length).toBeGreaterThan(300);
  });

  it('are found in strings, joined strings, templates and JSX, and labels and formulas are none', () => {
    const source = `
      const a = 'The table is gone.' + ' Read again.', b = \`The tab \${a} is gone. Read it again.\`;
      const c = <p>Nothing of it <b>stays</b> where it was.</p>, d = <p>The {a} of it: none at all.</p>;
      const e = 'Wire heights, lowest first', f = 'IF(A1=1;"yes. No. None";2)';`;
    expect(sentencesOf(source, 'tsx')).toEqual([
      'The table is gone. Read again.',
      'The tab … is gone. Read it again.',
      'Nothing of it … where it was.',
      'The … of it: none at all.',
    ]);
  });
});

function sentencesIn(file: string): { file: string; text: string }[] {
  const texts = sentencesOf(readFileSync(file, 'utf8'), file.endsWith('x') ? 'tsx' : 'ts');
  return texts.map((text) => ({ file, text }));
}

function sentencesOf(source: string, lang: 'ts' | 'tsx'): string[] {
  return textsIn(parseAst(source, { lang }) as unknown as Node).filter(isSentence);
}

/** Four words or more, a capital first, and a full stop or its like: a label, a heading or a button has none. */
function isSentence(text: string): boolean {
  const words = text.split(' ').filter((word) => /\p{L}/u.test(word));
  const hasStop = /[\p{L}\p{N})”"%…]{2}[.?!](\s|$)|:$/u.test(text);
  return /^[“"(]?\p{Lu}/u.test(text) && !/^[A-Z0-9_.]+\(/.test(text) && words.length >= 4 && hasStop;
}

/** Each text on its own, with … for what is filled in. */
function textsIn(node: Node): string[] {
  const text = textOf(node);
  if (text !== undefined) return [text.replace(/\s+/g, ' ').trim()];
  const children = Object.values(node).flat().filter(isNode);
  const below = children.flatMap(textsIn);
  if (node.type !== 'JSXElement' && node.type !== 'JSXFragment') return below;
  const inside = (node as Node & { children: Node[] }).children.map((child) => textOf(child) ?? '…').join('');
  return [...below, inside.replace(/\s+/g, ' ').trim()];
}

function textOf(node: Node): string | undefined {
  const { type, value, left, right, quasis, operator } = node as Node & {
    value?: unknown;
    left?: Node;
    right?: Node;
    quasis?: { value: { cooked: string } }[];
    operator?: string;
  };
  if ((type === 'Literal' || type === 'JSXText') && typeof value === 'string') return value;
  if (type === 'TemplateLiteral') return quasis!.map((quasi) => quasi.value.cooked).join('…');
  const joined = operator === '+' && left && right ? [textOf(left), textOf(right)] : [];
  return joined.length > 0 && !joined.includes(undefined) ? joined.join('') : undefined;
}

function isNode(child: unknown): child is Node {
  return typeof (child as Node | null)?.type === 'string';
}
