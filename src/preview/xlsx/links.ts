/**
 * Links: the file has a text and an address; the engine keeps both in one text, "[text](address)". A text that only
 * looks like one carries an apostrophe, see typed-text.ts.
 */
import { literalText } from '../engine/typed-text';

export type Link = { text: string; hyperlink: string };

const LINK = /^\[(.+)\]\((.+)\)$/;

/** The engine's content for a link, or undefined where the engine would show something else than that text. */
export function linkContent(text: string, address: string): string | undefined {
  const isPlain = literalText(text).content === text && !text.includes('\n');
  return isPlain && /^(https?:\/\/|mailto:)\S+$/i.test(address) ? `[${text}](${address})` : undefined;
}

/** The link that an engine content stands for. */
export function linkOf(content: string): Link | undefined {
  const [, text, hyperlink] = LINK.exec(content) ?? [];
  return text && hyperlink ? { text, hyperlink } : undefined;
}
