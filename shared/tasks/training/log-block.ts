/**
 * The training log as a live block: typed days on the left, plain formulas that say what is still missing.
 *
 * Ready is a pig or batch only by what was seen here: in the pen, saw the wire, backed off, passed a check with
 * an observer, long enough in. What the seller says is kept and changes nothing.
 *
 *   ready from = the later of (day of the check, day in the pen + minimum days), or the words "not ready"
 *
 * "not ready" is text on purpose: a group list that points at the cell then stops the rotation plan with a
 * message instead of starting the group on the first day.
 */
import { BLANK, formula, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { BlockCell, BlockStyle, WriteBlock } from '../../contract';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { FREE_COLUMNS } from '../name-blank-headings';
import { addSettings, type SettingSpec, type SettingValues } from '../settings';
import { MINIMUM_DAYS_NOTE } from './training-advice';

export const LOG_BLOCK = 'SOUNDER_TRAINING_LOG';

export const LOG_INPUTS = [
  'Pig or batch',
  'Group',
  'Head',
  'In the pen on',
  'Saw the wire on',
  'Backed off on',
  'Passed check on',
  'Observer',
] as const;
export const LOG_RESULTS = ['Days in', 'Status', 'Still missing', 'Ready from', 'Group ready from'] as const;
export const LOG_REMARKS = ['Seller says trained', 'Note'] as const;
export const LOG_HEADINGS = [...LOG_INPUTS, ...LOG_RESULTS, ...LOG_REMARKS] as const;

export const NOT_READY = 'not ready';

export const LOG_SETTINGS: readonly SettingSpec<'minimumDays'>[] = [
  {
    key: 'minimumDays',
    label: 'Fewest days in the pen',
    unit: 'days',
    start: 3,
    note: MINIMUM_DAYS_NOTE,
    min: 0,
    max: 60,
    whole: true,
  },
];

const NOTES = [
  'One row a pig or batch. Type days as dates. A seller’s word is written down and changes nothing.',
  'For the rotation: in your group list, under “In rotation from”, type = and click the group’s “Group ready from” cell. While that says “not ready”, planning stops with a message.',
];
const CAUTION =
  'Turn out only what a person has seen back off from a live wire. No electric fence holds every pig: keep a second fence between pigs and roads.';

/** Rows ready to type into, at least. Judgement. */
const FEWEST_ROWS = 15;
const FREE_ROWS = 5;

/** Typed cells of one row, by heading; also under headings that the grower added. */
export type LogRow = ReadonlyMap<string, BlockCell>;
export type LogBlock = Pick<WriteBlock, 'name' | 'cells' | 'styles' | 'rules' | 'widths' | 'freezeRows'>;

export function composeLogBlock(
  settings: SettingValues<'minimumDays'>,
  typed: readonly LogRow[],
  addedHeadings: readonly string[],
  origin: Origin,
): LogBlock {
  const draft = draftBlock(origin);
  draft.add([text('Training log')], 'title');
  for (const note of NOTES) draft.add([text(note)], 'muted');
  draft.add([text(CAUTION)], 'warning');
  const { minimumDays } = addSettings(draft, LOG_SETTINGS, settings, 'US');
  const todayRow = draft.add([text('Today'), formula('=TODAY()', 'yyyy-mm-dd')]);
  draft.add();
  const headings = [...LOG_HEADINGS, ...addedHeadings, ...Array<string>(FREE_COLUMNS).fill('')];
  draft.add(headings.map(text), 'heading');
  const first = draft.next();
  const last = first + Math.max(FEWEST_ROWS, typed.length + FREE_ROWS) - 1;
  const places: Places = { minimumDays, today: draft.fixed(todayRow, 1), first, last };
  for (let row = first; row <= last; row++) {
    addLogRow(draft, places, typed[row - first] ?? new Map(), headings);
  }
  const status = LOG_HEADINGS.indexOf('Status');
  const colour = (word: string, background: string) => ({
    row: first - origin.row,
    column: status,
    rows: last - first + 1,
    columns: 1,
    formula: `=${draft.at(first, status)}="${word}"`,
    background,
  });
  return {
    name: LOG_BLOCK,
    ...composeBlock(draft.rows),
    rules: [colour(NOT_READY, '#fdecea'), colour('ready', '#e6f4ea')],
    widths: [170, 110, 60, 110, 120, 110, 120, 110, 70, 80, 260, 100, 130, 150, 200],
    freezeRows: 0,
  };
}

interface Places {
  readonly minimumDays: string;
  readonly today: string;
  readonly first: number;
  readonly last: number;
}

function addLogRow(draft: Draft, places: Places, typed: LogRow, headings: readonly string[]): void {
  const row = draft.next();
  const results = resultCells(draft, row, places);
  const cells = headings.map((heading) => results.get(heading) ?? typed.get(heading) ?? BLANK);
  const styles = headings.map((heading): BlockStyle => (results.has(heading) ? 'plain' : 'input'));
  draft.add(cells, styles);
}

function resultCells(draft: Draft, row: number, places: Places): ReadonlyMap<string, BlockCell> {
  const column = (heading: (typeof LOG_HEADINGS)[number]): number => LOG_HEADINGS.indexOf(heading);
  const at = (heading: (typeof LOG_HEADINGS)[number]): string => draft.at(row, column(heading));
  const down = (heading: (typeof LOG_HEADINGS)[number]): string =>
    draft.down(places.first, places.last, column(heading));
  const [name, group, inPen, check] = [
    at('Pig or batch'),
    at('Group'),
    at('In the pen on'),
    at('Passed check on'),
  ];
  const [missing, ready] = [at('Still missing'), at('Ready from')];
  const ifNamed = (then: string): string => `=IF(${name}="";"";${then})`;
  const ownReady = `SUMPRODUCT((${down('Group')}=${group})*(${down('Ready from')}="${NOT_READY}"))`;
  return new Map<string, BlockCell>([
    [
      'Days in',
      formula(
        ifNamed(`IF(ISNUMBER(${inPen});MAX(0;IF(ISNUMBER(${check});${check};${places.today})-${inPen});"")`),
        '0',
      ),
    ],
    [
      'Status',
      formula(ifNamed(`IF(${missing}<>"";"${NOT_READY}";IF(${ready}>${places.today};"wait";"ready"))`)),
    ],
    ['Still missing', formula(ifNamed(missingText(at, places.today)))],
    [
      'Ready from',
      formula(
        ifNamed(`IF(${missing}="";MAX(${check};${inPen}+${places.minimumDays});"${NOT_READY}")`),
        'yyyy-mm-dd',
      ),
    ],
    [
      'Group ready from',
      formula(
        ifNamed(
          `IF(${group}="";"";IF(${ownReady}>0;"${NOT_READY}";MAX(${ready};MAXIFS(${down('Ready from')};${down('Group')};${group}))))`,
        ),
        'yyyy-mm-dd',
      ),
    ],
  ]);
}

/** "saw the wire; an observer": each piece begins with "; ", and the first two signs are cut off. */
function missingText(at: (heading: (typeof LOG_HEADINGS)[number]) => string, today: string): string {
  const [inPen, saw, back, check, observer, seller] = [
    at('In the pen on'),
    at('Saw the wire on'),
    at('Backed off on'),
    at('Passed check on'),
    at('Observer'),
    at('Seller says trained'),
  ];
  const days = [inPen, saw, back, check].join(';');
  const piece = (isMissing: string, words: string): string => `IF(${isMissing};"; ${words}";"")`;
  const pieces = [
    piece(`NOT(ISNUMBER(${inPen}))`, 'day in the pen'),
    piece(`NOT(ISNUMBER(${saw}))`, 'saw the wire'),
    piece(`NOT(ISNUMBER(${back}))`, 'backed off'),
    piece(`NOT(ISNUMBER(${check}))`, 'passed the check'),
    piece(`${observer}=""`, 'name of the observer'),
    piece(
      `COUNT(${days})<COUNTA(${days})`,
      'a day that is typed as words (Format > Number > Date, then type it again)',
    ),
    piece(
      `OR(AND(COUNT(${inPen};${saw})=2;${saw}<${inPen});AND(COUNT(${saw};${back})=2;${back}<${saw});AND(COUNT(${back};${check})=2;${check}<${back}))`,
      'days in their order',
    ),
    piece(`MAX(${days};0)>${today}`, 'a day that lies ahead'),
  ].join('&');
  const seen = `COUNT(${days})=4`;
  const word = `IF(AND(${seller}<>"";NOT(${seen}));" (a seller’s word does not count)";"")`;
  return `MID(${pieces};3;500)&${word}`;
}
