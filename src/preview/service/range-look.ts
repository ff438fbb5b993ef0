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

/** Gives the cells what a matrix of what scripts write stands for; those that have it already are left alone. */
function setFormatting<Entry>(
  range: RangePlace,
  method: string,
  values: unknown,
  formattingOf: (entry: Entry) => Formatting,
): void {
  const { book } = state(range);
  const place = area(range);
  const { sheetId } = place;
  const matrix = fittingMatrix<Entry>(method, place, values);
  refuseProtected(state(range), place);
  const wanted = new Map([...new Set(matrix.flat())].map((entry) => [entry, formattingOf(entry)]));
  const isThere = ({ style = {}, format }: Formatting, row: number, column: number): boolean => {
    const own: StylePatch = book.style(sheetId, row, column);
    return (
      (format === undefined || format === book.engineFormat(sheetId, row, column)) &&
      Object.entries(style).every(
        ([key, value]) => (own[key as keyof StylePatch] || undefined) === (value || undefined),
      )
    );
  };
  const changes = zonesByEntry(
    place,
    matrix.map((line, r) =>
      line.map((entry, c) => {
        const formatting = wanted.get(entry)!;
        return isThere(formatting, place.row + r, place.column + c) ? null : formatting;
      }),
    ),
  );
  changes.delete(null);
  book.batch(
    [...changes].map(([formatting, target]) => ({ type: 'SET_FORMATTING', sheetId, target, ...formatting })),
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
type Formatting = { style?: StylePatch; format?: string };

const background = (color: Nullable): Formatting => ({ style: { fillColor: cssColor(color) } });
const fontColor = (color: Nullable): Formatting => ({ style: { textColor: cssColor(color) } });
const fontWeight = (weight: Nullable): Formatting => ({
  style: { bold: oneOf('setFontWeight', weight ?? 'normal', ['bold', 'normal']) === 'bold' },
});
const fontStyle = (style: Nullable): Formatting => ({
  style: { italic: oneOf('setFontStyle', style ?? 'normal', ['italic', 'normal']) === 'italic' },
});
const wrapping = (wrap: boolean): Formatting => ({ style: { wrapping: wrap ? 'wrap' : 'overflow' } });

export class RangeLook extends RangePlace {
  setNumberFormats(formats: unknown): this {
    const { book, typedColumns } = state(this);
    setFormatting<string>(this, 'setNumberFormats', formats, (pattern) => {
      if (typedColumns.some((typed) => overlaps(typed, area(this)))) throw typedColumn();
      const format = engineFormat(book.engine, String(pattern ?? ''));
      if (format === undefined) throw new Error(`The preview cannot show the number format "${pattern}"`);
      return { format };
    });
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
    setFormatting(this, 'setBackgrounds', colors, background);
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
    setFormatting(this, 'setFontColors', colors, fontColor);
    return this;
  }
  getFontColors(): string[][] {
    return getStyles(this, (style) => style.textColor ?? '#000000');
  }
  setFontWeights(weights: unknown): this {
    setFormatting(this, 'setFontWeights', weights, fontWeight);
    return this;
  }
  setFontWeight(weight: Nullable): this {
    return this.setFontWeights(filled(area(this), weight));
  }
  getFontWeights(): string[][] {
    return getStyles(this, (style) => (style.bold ? 'bold' : 'normal'));
  }
  setFontStyles(styles: unknown): this {
    setFormatting(this, 'setFontStyles', styles, fontStyle);
    return this;
  }
  setFontStyle(style: Nullable): this {
    return this.setFontStyles(filled(area(this), style));
  }
  getFontStyles(): string[][] {
    return getStyles(this, (style) => (style.italic ? 'italic' : 'normal'));
  }
  setWraps(wraps: unknown): this {
    setFormatting(this, 'setWraps', wraps, wrapping);
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
