/**
 * The training log as a live block: typed days on the left, plain formulas that say what is still missing.
 *
 * Ready is a pig or batch only by what was seen here: in the pen, saw the wire, backed off, passed a check with
 * an observer, long enough in. What the seller says is kept and changes nothing.
 *
 *   ready from = the later of (day of the check, day in the pen + minimum days), or the words "not ready"
 *
 * A group is ready only when every row that names it is: also a row without a name or without formulas of its own,
 * which was put in between or typed right below the log.
 *
 * "not ready" is text on purpose: a group list that points at the cell then stops the rotation plan with a
 * message instead of starting the group on the first day.
 */
import { BLANK, formula, text } from '../../block/cells';
import { composeBlock } from '../../block/compose-block';
import type { BlockCell, BlockStyle, WriteBlock } from '../../contract';
import { type Draft, draftBlock, type Origin } from '../draft-block';
import { addEndLine, isFilledBelow } from '../end-line';
import { FREE_COLUMNS } from '../name-blank-headings';
import { NEW_TABLE, roomToType, type TableRoom } from '../room-to-type';
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
export const NAME_MISSING = 'name missing';

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

/** Rows ready to type into. Judgement. */
const FREE_ROWS = 15;
/** Rows right below the log in which a group is looked for, where they touch it. Judgement. */
const ROWS_BELOW = 20;

/** Typed cells of one row, by heading; also under headings that the grower added. */
export type LogRow = ReadonlyMap<string, BlockCell>;
export type LogBlock = Pick<WriteBlock, 'name' | 'cells' | 'styles' | 'rules' | 'widths' | 'freezeRows'>;

/** `headings`: those of the log that stands, in its order and with its free columns; empty for a first one. */
export function composeLogBlock(
  settings: SettingValues<'minimumDays'>,
  typed: readonly LogRow[],
  headings: readonly string[],
  origin: Origin,
  room: TableRoom = NEW_TABLE,
): LogBlock {
  const draft = draftBlock(origin);
  draft.add([text('Training log')], 'title');
  for (const note of NOTES) draft.add([text(note)], 'muted');
  draft.add([text(CAUTION)], 'warning');
  const { minimumDays } = addSettings(draft, LOG_SETTINGS, settings, 'US');
  const todayRow = draft.add([text('Today'), formula('=TODAY()', 'yyyy-mm-dd')]);
  draft.add();
  const across = withFreeColumns(headings.length > 0 ? headings : LOG_HEADINGS);
  const headRow = draft.add(across.map(text), 'heading');
  const endRow = headRow + roomToType(typed.length, FREE_ROWS, room) + 1;
  const table: Table = {
    headings: across,
    minimumDays,
    today: draft.fixed(todayRow, 1),
    headRow,
    endRow,
    lastInput: Math.max(...LOG_INPUTS.map((heading) => across.indexOf(heading))),
  };
  while (draft.next() < endRow) addLogRow(draft, table, typed[draft.next() - headRow - 1] ?? new Map());
  addEndLine(draft, table.lastInput);
  const status = across.indexOf('Status');
  const colour = (condition: (cell: string) => string, background: string) => ({
    row: headRow + 1 - origin.row,
    column: status,
    rows: endRow - headRow - 1,
    columns: 1,
    formula: `=${condition(draft.at(headRow + 1, status))}`,
    background,
  });
  return {
    name: LOG_BLOCK,
    ...composeBlock(draft.rows),
    rules: [
      colour((cell) => `OR(${cell}="${NOT_READY}";${cell}="${NAME_MISSING}")`, '#fdecea'),
      colour((cell) => `${cell}="ready"`, '#e6f4ea'),
    ],
    widths: [170, 110, 60, 110, 120, 110, 120, 110, 70, 100, 260, 100, 130, 150, 200],
    freezeRows: 0,
  };
}

/** The headings with free columns at their right, where none is left. */
function withFreeColumns(headings: readonly string[]): readonly string[] {
  return headings.includes('') ? headings : [...headings, ...Array<string>(FREE_COLUMNS).fill('')];
}

type Heading = (typeof LOG_HEADINGS)[number];

interface Table {
  readonly headings: readonly string[];
  readonly minimumDays: string;
  readonly today: string;
  readonly headRow: number;
  /** Row of the end line. */
  readonly endRow: number;
  /** Last column that is typed into, from 0; remarks aside. */
  readonly lastInput: number;
}

function addLogRow(draft: Draft, table: Table, typed: LogRow): void {
  const results = resultCells(draft, draft.next(), table);
  const { headings } = table;
  // A heading that stands twice counts where it stands first.
  const isFirst = (heading: string, c: number): boolean => heading !== '' && headings.indexOf(heading) === c;
  const cells = headings.map((heading, c) =>
    isFirst(heading, c) ? (results.get(heading) ?? typed.get(heading) ?? BLANK) : BLANK,
  );
  const styles = headings.map(
    (heading, c): BlockStyle => (isFirst(heading, c) && results.has(heading) ? 'plain' : 'input'),
  );
  draft.add(cells, styles);
}

function resultCells(draft: Draft, row: number, table: Table): ReadonlyMap<string, BlockCell> {
  const { headings, headRow, endRow, minimumDays, today } = table;
  const at = (heading: Heading): string => draft.at(row, headings.indexOf(heading));
  const down = (heading: Heading): string => draft.down(headRow, endRow, headings.indexOf(heading));
  const [group, inPen, check] = [at('Group'), at('In the pen on'), at('Passed check on')];
  const [missing, ready] = [at('Still missing'), at('Ready from')];
  const typed = [...LOG_INPUTS, ...LOG_REMARKS].map(at).join(';');
  const ifUsed = (then: string): string => `=IF(COUNTA(${typed})=0;"";${then})`;
  const latest = `MAX(${ready};MAXIFS(${down('Ready from')};${down('Group')};${group}))`;
  return new Map<Heading, BlockCell>([
    [
      'Days in',
      formula(
        ifUsed(`IF(ISNUMBER(${inPen});MAX(0;IF(ISNUMBER(${check});${check};${today})-${inPen});"")`),
        '0',
      ),
    ],
    [
      'Status',
      formula(
        ifUsed(
          `IF(TRIM(${at('Pig or batch')})="";"${NAME_MISSING}";IF(${missing}<>"";"${NOT_READY}";IF(${ready}>${today};"wait";"ready")))`,
        ),
      ),
    ],
    ['Still missing', formula(ifUsed(missingText(at, today)))],
    [
      'Ready from',
      formula(ifUsed(`IF(${missing}="";MAX(${check};${inPen}+${minimumDays});"${NOT_READY}")`), 'yyyy-mm-dd'),
    ],
    [
      'Group ready from',
      formula(
        ifUsed(`IF(${group}="";"";IF(${rowsNotReady(draft, table, group)}>0;"${NOT_READY}";${latest}))`),
        'yyyy-mm-dd',
      ),
    ],
  ]);
}

/** How many rows name the group and have no day from which they are ready; those right below the log among them. */
function rowsNotReady(draft: Draft, { headings, headRow, endRow, lastInput }: Table, group: string): string {
  const [groups, ready] = [headings.indexOf('Group'), headings.indexOf('Ready from')];
  const between = (first: number, last: number): string =>
    `SUMPRODUCT((TRIM(${draft.down(first, last, groups)})=TRIM(${group}))*(1-ISNUMBER(${draft.down(first, last, ready)})))`;
  // The ranges begin at the headings, so that a row put in above the first one counts; the heading itself does not.
  const heading = `IF(${draft.fixed(headRow, groups)}=TRIM(${group});1;0)`;
  const below = `IF(${isFilledBelow(draft, endRow, lastInput)};${between(endRow, endRow + ROWS_BELOW)};0)`;
  return `${between(headRow, endRow)}-${heading}+${below}`;
}

/** "saw the wire; an observer": each piece begins with "; ", and the first two signs are cut off. */
function missingText(at: (heading: Heading) => string, today: string): string {
  const [name, group, inPen, saw, back, check, observer, seller] = [
    at('Pig or batch'),
    at('Group'),
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
    piece(`TRIM(${name})=""`, 'name of the pig or batch'),
    piece(`LEN(${group})<>LEN(TRIM(${group}))`, 'the group’s name without a space too many'),
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
