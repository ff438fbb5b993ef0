/** The answer in the page: the same core as the cell function, and its refusals sorted by the field they concern. */
import type { AnyEntry, Param } from '../../../../shared/catalogue/define';
import { type Answer, call } from '../../../../shared/door/call';
import { readTyped } from '../../../../shared/locale/read-typed';
import { type Argument, callValue, isBlankArgument } from './argument';

export type Outcome =
  | { readonly kind: 'answer'; readonly answer: Answer }
  /** Required arguments that are still empty. */
  | { readonly kind: 'unfinished'; readonly missing: readonly string[] }
  | { readonly kind: 'refused'; readonly argument: string | undefined; readonly sentence: string };

/** In the page dates are ISO text, so the door never sees a Date. */
const PAGE_EDGE = { dayOfDate: () => Number.NaN };

export function workOut(entry: AnyEntry, args: readonly Argument[], comma: boolean): Outcome {
  const missing = entry.params.filter((param, i) => isRequired(param) && isBlankArgument(args[i] ?? NONE));
  if (missing.length > 0) return { kind: 'unfinished', missing: missing.map(({ name }) => name) };
  for (const [i, param] of entry.params.entries()) {
    const typed = args[i]?.from === 'typed' ? readTyped(args[i].text, comma) : undefined;
    if (typed && 'problem' in typed) {
      return { kind: 'refused', argument: param.name, sentence: `${inWords(param.name)}: ${typed.problem}` };
    }
  }
  try {
    const values = args.map((argument) => callValue(argument, comma));
    return { kind: 'answer', answer: call(entry, values, PAGE_EDGE) };
  } catch (error) {
    return refused(entry, error instanceof Error ? error.message : String(error));
  }
}

const NONE: Argument = { from: 'typed', text: '' };

function isRequired(param: Param): boolean {
  return !param.optional && !('default' in param && param.default !== undefined);
}

function refused(entry: AnyEntry, sentence: string): Outcome {
  const text = sentence.startsWith(`${entry.name}: `) ? sentence.slice(entry.name.length + 2) : sentence;
  const argument = entry.params.find(({ name }) => new RegExp(`^${name}\\b`).test(text))?.name;
  return { kind: 'refused', argument, sentence: text };
}

/** An argument's name as people say it. */
export function inWords(name: string): string {
  return name.replace(/_/g, ' ');
}
