/** The formula that a filled form stands for. */

import { readTyped } from '../../../../shared/locale/read-typed';
import { type Argument, typedReference } from './argument';

interface Writing {
  /** Arguments are parted by ";" where it is written to the sheet, which every locale takes. */
  readonly separator: ';' | ',';
  /** The spreadsheet writes a decimal comma. */
  readonly comma: boolean;
}

/** "=NAME(1;;B2)". Blanks in the middle stay empty, blanks at the end are dropped. */
export function formulaText(name: string, args: readonly Argument[], writing: Writing): string {
  const parts = args.map((argument) => argumentText(argument, writing.comma));
  while (parts.length > 0 && parts[parts.length - 1] === '') parts.pop();
  const space = writing.separator === ',' ? ' ' : '';
  return `=${name}(${parts.join(writing.separator + space)})`;
}

function argumentText(argument: Argument, comma: boolean): string {
  if (argument.from === 'cells') return argument.reference;
  const reference = typedReference(argument);
  if (reference !== undefined) return reference;
  const typed = readTyped(argument.text, comma);
  return 'problem' in typed ? '' : typed.literal;
}
