/** How a range looks: number formats, colours, fonts, alignment, wrapping. */
import type { EngineStyle } from '../engine/engine';
import { engineFormat, sheetsFormat } from '../engine/number-format';
import { overlaps, zoneOf, zonesByEntry } from './area';
import { guardService } from './call-gate';
import { cssColor } from './colors';
import { filled, fittingMatrix, RangePlace, refuseProtected } from './range-place';
import { typedColumn } from './refusals';

const state = RangePlace.state;
const area = RangePlace.area;

/** Sets one property of the cells' style from a matrix of what scripts write. */
function setStyles<Entry>(
  range: RangePlace,
  method: string,
  values: unknown,
  styleOf: (entry: Entry) => StylePatch,
): void {
  const { book } = state(range);
  const place = area(range);
  const matrix = fittingMatrix<Entry>(method, place, values);
  refuseProtected(state(range), place);
  book.batch(
    [...zonesByEntry(place, matrix)].map(([entry, target]) => ({
      type: 'SET_FORMATTING',
      sheetId: place.sheetId,
      target,
      style: styleOf(entry),
    })),
  );
}

function getStyles<Entry>(range: RangePlace, read: (style: EngineStyle) => Entry): Entry[][] {
  const { book } = state(range);
  const { sheetId, row, column, rows, columns } = area(range);
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (__, c) => read(book.style(sheetId, row + r, column + c))),
  );
}

function oneOf<const Choice extends string>(
  method: string,
  value: unknown,
  choices: readonly Choice[],
): Choice {
  if (choices.includes(value as Choice)) return value as Choice;
  throw new Error(`Range.${method}: unexpected value "${String(value)}"`);
}

type Nullable = string | null | undefined;
type StylePatch = { [Key in keyof EngineStyle]?: EngineStyle[Key] | undefined };

const background = (color: Nullable): StylePatch => ({ fillColor: cssColor(color) });
const fontColor = (color: Nullable): StylePatch => ({ textColor: cssColor(color) });
const fontWeight = (weight: Nullable): StylePatch => ({
  bold: oneOf('setFontWeight', weight ?? 'normal', ['bold', 'normal']) === 'bold',
});
const fontStyle = (style: Nullable): StylePatch => ({
  italic: oneOf('setFontStyle', style ?? 'normal', ['italic', 'normal']) === 'italic',
});
const wrapping = (wrap: boolean): StylePatch => ({ wrapping: wrap ? 'wrap' : 'overflow' });

export class RangeLook extends RangePlace {
  setNumberFormats(formats: unknown): this {
    const { book } = state(this);
    const place = area(this);
    const matrix = fittingMatrix<string>('setNumberFormats', place, formats);
    refuseProtected(state(this), place);
    if (state(this).typedColumns.some((typed) => overlaps(typed, place))) throw typedColumn();
    const commands = [...zonesByEntry(place, matrix)].map(([pattern, target]) => {
      const format = engineFormat(book.engine, String(pattern ?? ''));
      if (format === undefined) throw new Error(`The preview cannot show the number format "${pattern}"`);
      return { type: 'SET_FORMATTING', sheetId: place.sheetId, target, format };
    });
    book.batch(commands);
    return this;
  }
  setNumberFormat(format: string): this {
    return this.setNumberFormats(filled(area(this), format));
  }
  getNumberFormats(): string[][] {
    const { book, modes } = state(this);
    const { sheetId, row, column, rows, columns } = area(this);
    return Array.from({ length: rows }, (_, r) =>
      Array.from(
        { length: columns },
        (__, c) =>
          sheetsFormat(book.cell(sheetId, row + r, column + c).format ?? '') ||
          book.ownFormat(sheetId, row + r, column + c) ||
          modes.automaticFormat,
      ),
    );
  }
  getNumberFormat(): string {
    return this.getNumberFormats()[0]![0]!;
  }

  setBackgrounds(colors: unknown): this {
    setStyles(this, 'setBackgrounds', colors, background);
    return this;
  }
  setBackground(color: Nullable): this {
    return this.setBackgrounds(filled(area(this), color));
  }
  getBackgrounds(): string[][] {
    return getStyles(this, (style) => style.fillColor ?? '#ffffff');
  }
  getBackground(): string {
    return this.getBackgrounds()[0]![0]!;
  }
  setFontColors(colors: unknown): this {
    setStyles(this, 'setFontColors', colors, fontColor);
    return this;
  }
  getFontColors(): string[][] {
    return getStyles(this, (style) => style.textColor ?? '#000000');
  }
  setFontWeights(weights: unknown): this {
    setStyles(this, 'setFontWeights', weights, fontWeight);
    return this;
  }
  setFontWeight(weight: Nullable): this {
    return this.setFontWeights(filled(area(this), weight));
  }
  getFontWeights(): string[][] {
    return getStyles(this, (style) => (style.bold ? 'bold' : 'normal'));
  }
  setFontStyles(styles: unknown): this {
    setStyles(this, 'setFontStyles', styles, fontStyle);
    return this;
  }
  setFontStyle(style: Nullable): this {
    return this.setFontStyles(filled(area(this), style));
  }
  getFontStyles(): string[][] {
    return getStyles(this, (style) => (style.italic ? 'italic' : 'normal'));
  }
  setWraps(wraps: unknown): this {
    setStyles(this, 'setWraps', wraps, wrapping);
    return this;
  }
  clearFormat(): this {
    const { book, modes } = state(this);
    const place = area(this);
    const { sheetId, row, column, rows, columns } = place;
    refuseProtected(state(this), place);
    const formats = Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (__, c) =>
        modes.clearFormatKeepsNumberFormats ? book.engineFormat(sheetId, row + r, column + c) : '',
      ),
    );
    const kept = [...zonesByEntry(place, formats)].filter(([format]) => format !== '');
    book.batch([
      { type: 'CLEAR_FORMATTING', sheetId, target: [zoneOf(place)] },
      ...kept.map(([format, target]) => ({ type: 'SET_FORMATTING', sheetId, target, format })),
    ]);
    return this;
  }
}

guardService(RangeLook, 'Range');
