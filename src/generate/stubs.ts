/** Prints the cell stubs with their JSDoc, and the other top-level functions that Google Sheets must see. */
import type { AnyEntry, Param } from '../../shared/catalogue/define';
import { unitWords } from '../../shared/catalogue/describe';

/** Functions of the pushed script that are not cell functions: menu items and the sidebar's one door. */
export const SCRIPT_FUNCTIONS = [
  { name: 'onOpen', params: [] },
  { name: 'openSidebar', params: [] },
  { name: 'startSampleInFeet', params: [] },
  { name: 'startSampleMetric', params: [] },
  { name: 'checkThisSpreadsheet', params: [] },
  { name: 'showHelp', params: [] },
  { name: 'onEdit', params: ['event'] },
  { name: 'answerSidebar', params: ['callName', 'requestJson'] },
] as const;

/**
 * Text that follows the bundle: one plain function a cell function, then the menu's and sidebar's. Without @return, which
 * Google Sheets does not show.
 */
export function printStubs(catalogue: readonly AnyEntry[]): string {
  const cells = catalogue.map(printCellStub);
  const others = SCRIPT_FUNCTIONS.map(({ name, params }) => {
    const list = params.join(', ');
    return `function ${name}(${list}) {return Lib_.${name}(${list})}`;
  });
  return `${[...cells, ...others].join('\n')}\n`;
}

function printCellStub(entry: AnyEntry): string {
  const names = entry.params.map((param) => param.name).join(', ');
  return [
    '/**',
    ` * ${oneLine([entry.summary, ...(entry.cautions ?? [])].join(' '))}`,
    ...entry.params.map((param) => ` * @param {${jsType(param)}} ${param.name} ${oneLine(paramHelp(param))}`),
    ' * @customfunction',
    ' */',
    `function ${entry.name}(${names}) {return Lib_.cell('${entry.name}',arguments)}`,
  ].join('\n');
}

/** Help of one argument: Google shows every argument as required, so "Optional." is said in words. */
function paramHelp(param: Param): string {
  const unit = unitWords(param);
  const isSaid = unit.startsWith('any ') || param.help.toLowerCase().includes(unit);
  return [param.optional ? 'Optional.' : '', param.help, isSaid ? '' : `In ${unit}.`]
    .filter(Boolean)
    .join(' ');
}

/** Google shows none of them; a range does wherever one value does. */
function jsType({ kind }: Param): string {
  return {
    number: 'number',
    choice: 'string',
    units: 'string',
    boolean: 'boolean',
    date: 'Date',
    list: 'number[][]',
    corners: 'number[][]',
  }[kind];
}

/** JSDoc descriptions are one line of plain text; a comment must not be closed early. */
function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/\*\//g, '* /').trim();
}
