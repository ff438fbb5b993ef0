/** What an .xlsx file holds beside plain values, read from its own XML, so that a loss can be told. */
import { NEW_TAB_SIZE } from '../engine/book';
import { fileLooks, type Look } from './file-looks';
import { hasPageSetup } from './page-setup';
import { attribute, elements } from './xml-elements';

/** What can be in a file, one and many; the order is that of the sentence. */
export const KINDS = {
  note: ['note', 'notes'],
  link: ['link', 'links'],
  list: ['drop-down list', 'drop-down lists'],
  validation: ['other check on what is typed', 'other checks on what is typed'],
  hint: ['help text for a cell', 'help texts for cells'],
  richText: ['cell with partly bold or coloured text', 'cells with partly bold or coloured text'],
  formula: ['formula', 'formulas'],
  arrayFormula: ['array formula (kept as a plain one)', 'array formulas (kept as plain ones)'],
  colorRule: ['colour rule', 'colour rules'],
  apostrophe: ['apostrophe in the name of a tab', 'apostrophes in names of tabs'],
  name: ['named range', 'named ranges'],
  hiddenColumn: ['hidden column', 'hidden columns'],
  hiddenTab: [
    'tab that programs do not offer to show (kept as a hidden one)',
    'tabs that programs do not offer to show (kept as hidden ones)',
  ],
  group: ['group of rows or columns', 'groups of rows or columns'],
  filter: ['filter', 'filters'],
  table: ['formatted table', 'formatted tables'],
  pivot: ['pivot table', 'pivot tables'],
  chart: ['chart', 'charts'],
  sparkline: ['sparkline', 'sparklines'],
  picture: ['picture', 'pictures'],
  shape: ['drawing', 'drawings'],
  numberFormat: ['number or date format of a cell', 'number or date formats of cells'],
  alignment: ['cell with stacked, spread or shrunk text', 'cells with stacked, spread or shrunk text'],
  border: ['cell with borders', 'cells with borders'],
  fill: ['cell background in a theme colour or pattern', 'cell backgrounds in theme colours or patterns'],
  font: ['cell in a font or size of its own', 'cells in fonts or sizes of their own'],
  textColor: ['text in a theme colour', 'texts in theme colours'],
  protection: ['protected tab', 'protected tabs'],
  rowHeight: ['row with a height of its own', 'rows with heights of their own'],
  pageSetup: ['page setup of a tab', 'page setups of tabs'],
  printing: ['tab with headers, footers or page breaks', 'tabs with headers, footers or page breaks'],
  macros: ['set of macros', 'sets of macros'],
} as const;

export type Kind = keyof typeof KINDS;
/**
 * One thing in a file: its tab (counted from 0; -1 for the whole file) and its place in A1 notation, or its name;
 * how it is where another one of its kind in its place would not do.
 */
export type Item = { kind: Kind; tab: number; place: string; how?: string };
export type Contents = { items: Item[]; failing: { tab: number; place: string }[] };

const WORKBOOK = 'xl/workbook.xml';

type Parts = ReadonlyMap<string, string>;

/** Parts that a part refers to, by the last word of their relation's type. */
function relatedParts(parts: Parts, path: string, type: string): { id: string; path: string }[] {
  const folder = path.replace(/[^/]*$/, '');
  const relations = parts.get(`${folder}_rels/${path.slice(folder.length)}.rels`) ?? '';
  return elements(relations, 'Relationship')
    .filter(({ attributes }) => attribute(attributes, 'Type').endsWith(`/${type}`))
    .map(({ attributes }) => ({
      id: attribute(attributes, 'Id'),
      path: new URL(attribute(attributes, 'Target'), `file:///${folder}`).pathname.slice(1),
    }));
}

export function fileContents(parts: Parts): Contents {
  const worksheets = new Map(relatedParts(parts, WORKBOOK, 'worksheet').map(({ id, path }) => [id, path]));
  const paths = elements(parts.get(WORKBOOK) ?? '', 'sheet').flatMap(
    ({ attributes }) => worksheets.get(attribute(attributes, '(?:\\w+:)?id')) ?? [],
  );
  const richTexts = elements(parts.get('xl/sharedStrings.xml') ?? '', 'si').map(({ inner }) => isRich(inner));
  const looks = fileLooks(parts.get('xl/styles.xml') ?? '');
  const tabs = paths.map((path, tab) => tabContents(parts, path, tab, richTexts, looks));
  return {
    items: [...tabs.flatMap(({ items }) => items), ...wholeFileItems(parts)],
    failing: tabs.flatMap(({ failing }) => failing),
  };
}

function isRich(inner: string): boolean {
  return elements(inner, 'rPr').length > 0;
}

function wholeFileItems(parts: Parts): Item[] {
  const partsLike = (kind: Kind, pattern: RegExp): Item[] =>
    [...parts.keys()].filter((path) => pattern.test(path)).map((place) => ({ kind, tab: -1, place }));
  const inDrawings = (kind: Kind, name: string): Item[] =>
    [...parts].flatMap(([path, xml]) =>
      /^xl\/drawings\/[^/]+\.xml$/.test(path)
        ? elements(xml, name).map((_, index) => ({ kind, tab: -1, place: `${path} ${index}` }))
        : [],
    );
  const names = elements(parts.get(WORKBOOK) ?? '', 'definedName')
    .map(({ attributes }) => attribute(attributes, 'name'))
    .filter((name) => !name.startsWith('_xlnm.'));
  const tabs = elements(parts.get(WORKBOOK) ?? '', 'sheet');
  const tabNames = tabs
    .map(({ attributes }) => attribute(attributes, 'name'))
    .filter((name) => name.includes("'"));
  const hiddenTabs = tabs.flatMap(({ attributes }, tab) =>
    attribute(attributes, 'state') === 'veryHidden' ? [tab] : [],
  );
  return [
    ...hiddenTabs.map((tab) => ({ kind: 'hiddenTab' as const, tab, place: 'A1' })),
    ...tabNames.map((place) => ({ kind: 'apostrophe' as const, tab: -1, place })),
    ...names.map((place) => ({ kind: 'name' as const, tab: -1, place })),
    ...partsLike('pivot', /^xl\/pivotTables\/[^/]+\.xml$/),
    ...partsLike('chart', /^xl\/charts\/chart(Ex)?\d+\.xml$/),
    ...partsLike('macros', /^xl\/vbaProject\.bin$/),
    ...inDrawings('picture', 'pic'),
    ...inDrawings('shape', 'sp'),
  ];
}

function tabContents(
  parts: Parts,
  path: string,
  tab: number,
  richTexts: boolean[],
  looks: Look[][],
): Contents {
  const xml = parts.get(path) ?? '';
  const items: Item[] = [];
  const add: Add = (kind, place, how) => {
    items.push({ kind, tab, place, ...(how === undefined ? {} : { how }) });
  };
  const onceFor = (kind: Kind, pattern: RegExp): void => {
    if (pattern.test(xml)) add(kind, 'A1');
  };
  for (const related of relatedParts(parts, path, 'comments')) {
    for (const { attributes } of elements(parts.get(related.path) ?? '', 'comment')) {
      add('note', attribute(attributes, 'ref'));
    }
  }
  for (const related of relatedParts(parts, path, 'table')) add('table', related.path);
  for (const { attributes } of elements(xml, 'hyperlink')) add('link', attribute(attributes, 'ref'));
  for (const { attributes } of elements(xml, 'autoFilter')) add('filter', attribute(attributes, 'ref'));
  for (const { inner } of elements(xml, 'sparkline')) add('sparkline', inner);
  addValidations(xml, add);
  addColorRules(xml, add);
  for (const { attributes } of elements(xml, 'c')) {
    const own = looks[Number(attribute(attributes, 's'))] ?? [];
    for (const { kind, how } of own) add(kind, attribute(attributes, 'r'), how);
  }
  addHiddenColumns(xml, add);
  addRowHeights(xml, add);
  if (hasPageSetup(xml) || hasPrintNames(parts, tab)) add('pageSetup', 'A1');
  onceFor('group', /<(?:\w+:)?(?:row|col)\s[^>]*outlineLevel="[1-9]/);
  onceFor('protection', /<(?:\w+:)?(?:sheetProtection|protectedRange)\s/);
  onceFor('printing', /<(?:\w+:)?(?:oddHeader|oddFooter|brk)\b/);
  return { items, failing: addCells(xml, richTexts, tab, add) };
}

type Add = (kind: Kind, place: string, how?: string) => void;

function isTrue(text: string): boolean {
  return text === '1' || text === 'true';
}

/** Hidden columns to the right of a new tab's own ones are no loss: there is nothing there to hide. */
function addHiddenColumns(xml: string, add: Add): void {
  for (const { attributes } of elements(xml, 'col')) {
    if (!isTrue(attribute(attributes, 'hidden'))) continue;
    const last = Math.min(Number(attribute(attributes, 'max')), NEW_TAB_SIZE.columns);
    for (let column = Number(attribute(attributes, 'min')); column <= last; column += 1) {
      add('hiddenColumn', `column ${column}`);
    }
  }
}

/** Rows as high as the tab's rows usually are have no height of their own: some programs write it for each row. */
function addRowHeights(xml: string, add: Add): void {
  const usual = attribute(elements(xml, 'sheetFormatPr')[0]?.attributes ?? '', 'defaultRowHeight');
  for (const { attributes } of elements(xml, 'row')) {
    const height = attribute(attributes, 'ht');
    if (!isTrue(attribute(attributes, 'customHeight')) || Number(height) === Number(usual)) continue;
    add('rowHeight', `row ${attribute(attributes, 'r')}`, height);
  }
}

/** Areas to be printed and rows to be repeated on each page are names of the whole file. */
function hasPrintNames(parts: Parts, tab: number): boolean {
  return elements(parts.get(WORKBOOK) ?? '', 'definedName').some(
    ({ attributes }) =>
      /^_xlnm\.Print_(Area|Titles)$/.test(attribute(attributes, 'name')) &&
      Number(attribute(attributes, 'localSheetId')) === tab,
  );
}

/** Ranges of newer files stand in an element of their own, not in an attribute. */
function rangesOf(attributes: string, inner: string): string {
  return attribute(attributes, 'sqref') || (elements(inner, 'sqref')[0]?.inner ?? '');
}

function addValidations(xml: string, add: Add): void {
  for (const { attributes, inner } of elements(xml, 'dataValidation')) {
    const ranges = rangesOf(attributes, inner);
    const type = attribute(attributes, 'type');
    if (type === 'list') add('list', ranges);
    else if (type !== '' && type !== 'none') add('validation', ranges, type);
    if (attribute(attributes, 'prompt') || attribute(attributes, 'error')) add('hint', ranges);
  }
}

function addColorRules(xml: string, add: Add): void {
  for (const { attributes, inner } of elements(xml, 'conditionalFormatting')) {
    for (const rule of elements(inner, 'cfRule')) {
      // A data bar stands in the file twice, once for newer programs.
      const isSecond =
        attribute(attributes, 'sqref') === '' && attribute(rule.attributes, 'type') === 'dataBar';
      if (!isSecond) add('colorRule', rangesOf(attributes, inner));
    }
  }
}

/** Adds rich texts and formulas; gives the places of formulas whose last result is an error. */
function addCells(xml: string, richTexts: boolean[], tab: number, add: Add): Contents['failing'] {
  const failing: Contents['failing'] = [];
  for (const { attributes, inner } of elements(xml, 'c')) {
    if (inner === '') continue;
    const place = attribute(attributes, 'r');
    const value = elements(inner, 'v')[0]?.inner ?? '';
    const isShared = attribute(attributes, 't') === 's';
    if (isShared ? richTexts[Number(value)] : isRich(inner)) add('richText', place);
    const formula = elements(inner, 'f')[0];
    if (!formula) continue;
    add('formula', place);
    if (attribute(formula.attributes, 't') === 'array') add('arrayFormula', place);
    if (attribute(attributes, 't') === 'e' || value.startsWith('#')) failing.push({ tab, place });
  }
  return failing;
}
