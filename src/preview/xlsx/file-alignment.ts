/** How a cell style of an .xlsx file places its text, '' for the usual way. */
import { attribute, elements } from './xml-elements';

/** Attributes of "alignment" (ECMA-376 part 1, 18.8.1) that change what is seen, with their usual values. */
const USUAL: Readonly<Record<string, readonly string[]>> = {
  horizontal: ['', 'general'],
  vertical: ['', 'bottom'],
  textRotation: ['', '0'],
  indent: ['', '0'],
  wrapText: ['', '0', 'false'],
  shrinkToFit: ['', '0', 'false'],
};

export function fileAlignment(style: string): string {
  const own = elements(style, 'alignment')[0]?.attributes ?? '';
  return Object.entries(USUAL)
    .map(([name, usual]) => [name, attribute(own, name).replace('true', '1'), usual] as const)
    .flatMap(([name, value, usual]) => (usual.includes(value) ? [] : `${name} ${value}`))
    .join(', ');
}
