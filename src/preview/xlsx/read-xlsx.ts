/**
 * Reads an .xlsx file into an engine snapshot, by ExcelJS: the engine's own import turns the text "00123" into a
 * number. Values, formulas, formats, basic styles, merges, widths, frozen and hidden parts, names, colour rules by
 * formula, data validation, links.
 */
import type { Cell, Color, Row, Workbook, Worksheet } from 'exceljs';
import { NEW_TAB_SIZE } from '../engine/book';
import type { Engine } from '../engine/engine';
import type { FileStyle } from '../engine/file-style';
import { parseErrorFormula, toEngineFormula } from '../engine/formula-text';
import { localeOf } from '../engine/locale';
import { sheetsFormat } from '../engine/number-format';
import { literalText } from '../engine/typed-text';
import { DAY_MS, UNIX_EPOCH_SERIAL } from '../engine/zone-time';
import { areaOfA1, splitTabName } from '../service/area';
import { pixelsOfWidth } from './column-width';
import { engineTabName } from './engine-tab-name';
import { linkContent } from './links';
import { rotationOfDegrees } from './rotation';
import { shownFormat } from './shown-format';
import { readValidations } from './validation-rules';

/** Collects equal formats or styles under one number each, as engine snapshots want them. */
class Numbered<Entry> {
  readonly entries: Record<number, Entry> = {};
  private readonly ids = new Map<string, number>();

  idOf(entry: Entry): number {
    const key = JSON.stringify(entry);
    const id = this.ids.get(key) ?? this.ids.size + 1;
    this.ids.set(key, id);
    this.entries[id] = entry;
    return id;
  }
}

export function readXlsx(engine: Engine, file: Workbook, locale = 'en_US'): unknown {
  const formats = new Numbered<string>();
  const styles = new Numbered<FileStyle>();
  const workbook = engine.helpers.createEmptyWorkbookData();
  const sheets = file.worksheets.map((sheet, index) => readTab(engine, file, sheet, index, formats, styles));
  return {
    ...workbook,
    sheets: sheets.length > 0 ? sheets : workbook.sheets,
    formats: formats.entries,
    styles: styles.entries,
    namedRanges: readNames(file),
    settings: { ...workbook.settings, locale: localeOf(locale) },
  };
}

function readNames(file: Workbook): Record<string, string> {
  const names: Record<string, string> = {};
  for (const { name, ranges } of file.definedNames.model) {
    const { tab, rest } = splitTabName(ranges[0] ?? '');
    if (ranges.length === 1 && tab !== undefined && !name.startsWith('_xlnm')) {
      names[name] = `'${engineTabName(tab)}'!${rest}`;
    }
  }
  return names;
}

function readTab(
  engine: Engine,
  file: Workbook,
  sheet: Worksheet,
  index: number,
  formats: Numbered<string>,
  styles: Numbered<FileStyle>,
): unknown {
  const tab = engine.helpers.createEmptySheet(`tab${index + 1}`, engineTabName(sheet.name));
  const cells: Record<string, string> = {};
  const cellFormats: Record<string, number> = {};
  const cellStyles: Record<string, number> = {};
  const rows: Record<number, { size?: number; isHidden?: boolean }> = {};
  for (const row of rowsOf(sheet)) {
    if (row.hidden) rows[row.number - 1] = { isHidden: true };
    // Empty cells too: they may have a format for what spills or is typed there.
    row.eachCell({ includeEmpty: true }, (cell) => {
      const pattern = patternOf(cell);
      const format = formatOf(engine, cell, pattern);
      if (format) cellFormats[cell.address] = formats.idOf(format);
      const isKept = pattern === '' || pattern === sheetsFormat(format);
      const style: FileStyle = {
        ...styleOf(cell),
        ...(isKept ? {} : { filePattern: pattern, shownAs: format }),
      };
      if (Object.keys(style).length > 0) cellStyles[cell.address] = styles.idOf(style);
      const content = cell.isMerged && cell.master !== cell ? '' : contentOf(engine, cell);
      if (content) cells[cell.address] = content;
    });
  }
  // Files of some makers have no views at all, against ExcelJS's own types.
  const view = (sheet.views as typeof sheet.views | null)?.[0];
  const frozen = view?.state === 'frozen' ? view : undefined;
  const size = {
    rows: Math.max(NEW_TAB_SIZE.rows, sheet.rowCount),
    columns: Math.max(NEW_TAB_SIZE.columns, sheet.columnCount),
  };
  return {
    ...tab,
    rowNumber: size.rows,
    colNumber: size.columns,
    cells,
    formats: cellFormats,
    styles: cellStyles,
    rows,
    cols: readWidths(sheet, size.columns),
    merges: (sheet.model as { merges?: string[] }).merges ?? [],
    conditionalFormats: readRules(engine, sheet),
    dataValidationRules: readValidations(file, sheet, size),
    isVisible: sheet.state === 'visible',
    panes: { xSplit: frozen?.xSplit ?? 0, ySplit: frozen?.ySplit ?? 0 },
  };
}

/** Every row of the file, also those without a value, whose cells may have looks: ExcelJS's eachRow skips them. */
function* rowsOf(sheet: Worksheet): Generator<Row> {
  for (let number = 1; number <= sheet.rowCount; number += 1) {
    const row = sheet.findRow(number);
    if (row) yield row;
  }
}

function readWidths(
  sheet: Worksheet,
  columns: number,
): Record<number, { size?: number; isHidden?: boolean }> {
  const widths: Record<number, { size?: number; isHidden?: boolean }> = {};
  for (let number = 1; number <= columns; number += 1) {
    const { width, hidden } = sheet.getColumn(number);
    if (width || hidden) {
      widths[number - 1] = {
        ...(width ? { size: pixelsOfWidth(width) } : {}),
        ...(hidden ? { isHidden: true } : {}),
      };
    }
  }
  return widths;
}

function contentOf(engine: Engine, cell: Cell): string {
  const { value } = cell;
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') return literalText(value).content;
  if (value instanceof Date) return String(value.getTime() / DAY_MS + UNIX_EPOCH_SERIAL);
  if (cell.formula) return formulaContent(engine, cell.formula);
  if ('error' in value) return String(value.error);
  const link = cell.hyperlink ? linkContent(cell.text, cell.hyperlink) : undefined;
  return link ?? literalText(cell.text).content;
}

/** Newer functions carry a prefix in files. Those that the engine lacks keep it, to be saved as they came. */
function formulaContent(engine: Engine, formula: string): string {
  const { functionRegistry } = engine.registries;
  const text = formula.replace(/_xlfn\.(?:_xlws\.)?([A-Z][A-Z0-9.]*)/g, (prefixed, name: string) =>
    functionRegistry.contains(name) ? name : prefixed,
  );
  return toEngineFormula(`=${text}`, false) ?? parseErrorFormula(`=${text}`);
}

/** The file library has the hour of format 22 as a text. */
const LIBRARY_FORMAT_22 = 'm/d/yy "h":mm';

function patternOf(cell: Cell): string {
  const pattern = (cell.numFmt as string | undefined) ?? '';
  if (pattern === LIBRARY_FORMAT_22) return 'm/d/yy h:mm';
  return pattern === 'General' ? '' : pattern;
}

function formatOf(engine: Engine, cell: Cell, pattern: string): string {
  return shownFormat(engine, pattern) || (cell.value instanceof Date ? 'yyyy-mm-dd' : '');
}

function colorOf(color: Partial<Color> | undefined): string | undefined {
  return color?.argb && /^[0-9a-f]{8}$/i.test(color.argb)
    ? `#${color.argb.slice(2).toLowerCase()}`
    : undefined;
}

const VERTICAL = ['top', 'middle', 'bottom'] as const;

function styleOf(cell: Cell): FileStyle {
  const style: FileStyle = {};
  const { font, fill, alignment } = cell;
  if (font?.bold) style.bold = true;
  if (font?.italic) style.italic = true;
  const textColor = colorOf(font?.color);
  if (textColor) style.textColor = textColor;
  const fillColor = fill?.type === 'pattern' && fill.pattern === 'solid' ? colorOf(fill.fgColor) : undefined;
  if (fillColor) style.fillColor = fillColor;
  if (alignment?.wrapText) style.wrapping = 'wrap';
  const align = alignment?.horizontal;
  if (align === 'left' || align === 'center' || align === 'right') style.align = align;
  const verticalAlign = VERTICAL.find((place) => place === alignment?.vertical);
  if (verticalAlign) style.verticalAlign = verticalAlign;
  const turned = alignment?.textRotation;
  if (typeof turned === 'number' && turned !== 0) style.rotation = rotationOfDegrees(turned);
  if (alignment?.indent) style.indent = alignment.indent;
  return style;
}

type Rule = { type: string; formulae?: string[]; style?: { fill?: { bgColor?: Partial<Color> } } };

/** Colour rules by formula; other kinds are left out. */
function readRules(engine: Engine, sheet: Worksheet): unknown[] {
  const parts = (sheet as unknown as { conditionalFormattings?: { ref: string; rules: Rule[] }[] })
    .conditionalFormattings;
  return (parts ?? []).flatMap(({ ref, rules }, part) =>
    rules.flatMap((rule, index) => {
      const fillColor = colorOf(rule.style?.fill?.bgColor);
      const formula = rule.formulae?.[0];
      if (rule.type !== 'expression' || !fillColor || formula === undefined) return [];
      const ranges = ref.split(' ').filter((range) => areaOfA1(range, '', NEW_TAB_SIZE));
      const values = [formulaContent(engine, formula)];
      const kept = { type: 'CellIsRule', operator: 'customFormula', values, style: { fillColor } };
      return [{ id: `rule-${sheet.id}-${part}-${index}`, ranges, rule: kept }];
    }),
  );
}
