/** How the cell styles of an .xlsx file look, as far as the preview may lose it. */
import { fileAlignment } from './file-alignment';
import { formatCodeOf } from './format-codes';
import { attribute, elements } from './xml-elements';

/** Where it is not enough that there is such a look, how it is. */
export type Look = {
  kind: 'numberFormat' | 'alignment' | 'border' | 'fill' | 'font' | 'textColor';
  how?: string;
};

/** The looks of each cell style, in the order in which cells refer to them. Fonts are told apart from the first one. */
export function fileLooks(styles: string): Look[][] {
  const inside = (name: string): string => elements(styles, name)[0]?.inner ?? '';
  const borders = elements(inside('borders'), 'border').map(({ inner }) => /\sstyle="(?!none")/.test(inner));
  const fills = elements(inside('fills'), 'fill').map(isFilled);
  const fonts = elements(inside('fonts'), 'font').map(({ inner }) => inner);
  const codeOf = formatCodeOf(styles);
  return elements(inside('cellXfs'), 'xf').map(({ attributes, inner }) => {
    const font = fonts[Number(attribute(attributes, 'fontId'))] ?? '';
    const code = codeOf(attribute(attributes, 'numFmtId'));
    const alignment = fileAlignment(inner);
    const looks: [Look, boolean | undefined][] = [
      [{ kind: 'numberFormat', how: code }, code !== ''],
      [{ kind: 'alignment', how: alignment }, alignment !== ''],
      [{ kind: 'border' }, borders[Number(attribute(attributes, 'borderId'))]],
      [{ kind: 'fill' }, fills[Number(attribute(attributes, 'fillId'))]],
      [{ kind: 'font' }, isOtherFont(font, fonts[0] ?? '')],
      [{ kind: 'textColor' }, isColored(font)],
    ];
    return looks.flatMap(([look, isThere]) => (isThere ? [look] : []));
  });
}

function isFilled({ inner }: { inner: string }): boolean {
  const pattern = attribute(elements(inner, 'patternFill')[0]?.attributes ?? '', 'patternType');
  return elements(inner, 'gradientFill').length > 0 || !['', 'none', 'gray125'].includes(pattern);
}

function isOtherFont(font: string, usual: string): boolean {
  const value = (text: string, name: string): string =>
    attribute(elements(text, name)[0]?.attributes ?? '', 'val');
  const differs = (name: string): boolean => {
    const own = value(font, name);
    return own !== '' && own !== value(usual, name);
  };
  return (
    differs('sz') || differs('name') || elements(font, 'u').length > 0 || elements(font, 'strike').length > 0
  );
}

/** Theme colour 1 and black are the usual text colours. */
function isColored(font: string): boolean {
  const color = elements(font, 'color')[0]?.attributes ?? '';
  const theme = attribute(color, 'theme');
  const rgb = attribute(color, 'rgb');
  return (theme !== '' && theme !== '1') || (rgb !== '' && !/000000$/.test(rgb));
}
