/** How the cell styles of an .xlsx file look, as far as the preview may lose it. */
import { attribute, elements } from './xml-elements';

export type Look = 'border' | 'fill' | 'font' | 'textColor';

/** The looks of each cell style, in the order in which cells refer to them. Fonts are told apart from the first one. */
export function fileLooks(styles: string): Look[][] {
  const inside = (name: string): string => elements(styles, name)[0]?.inner ?? '';
  const borders = elements(inside('borders'), 'border').map(({ inner }) => /\sstyle="(?!none")/.test(inner));
  const fills = elements(inside('fills'), 'fill').map(isFilled);
  const fonts = elements(inside('fonts'), 'font').map(({ inner }) => inner);
  return elements(inside('cellXfs'), 'xf').map(({ attributes }) => {
    const font = fonts[Number(attribute(attributes, 'fontId'))] ?? '';
    const looks: [Look, boolean | undefined][] = [
      ['border', borders[Number(attribute(attributes, 'borderId'))]],
      ['fill', fills[Number(attribute(attributes, 'fillId'))]],
      ['font', isOtherFont(font, fonts[0] ?? '')],
      ['textColor', isColored(font)],
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
