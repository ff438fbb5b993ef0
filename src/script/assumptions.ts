/**
 * What we take for true about Google Sheets, once: the stand-in of the preview obeys it, the menu's "Check this
 * spreadsheet" tries it in a real file (actions/check-spreadsheet.ts), and whoever finds out more changes it here.
 */

/** likely: others have seen it; memory: nobody of us can show it; documented: Google says so. */
export type Sureness = 'documented' | 'likely' | 'memory';

export interface Assumption {
  readonly id: string;
  /** What we take for true, in plain words, where the check can try it. */
  readonly says?: string;
  /** The same, where only a person can: left out of the script. */
  readonly asks?: string;
  /** What of ours rests on it. */
  readonly matters: string;
  readonly sure: Sureness;
  readonly source: string;
  /** What the check must find, as its answer is written. */
  readonly wanted?: RegExp;
}

const MEMORY = 'from memory';

export const ASSUMPTIONS = [
  {
    id: 'semicolon',
    says: 'A formula may have ; between its arguments, whatever the country.',
    matters: 'every formula we write',
    sure: 'likely',
    source: MEMORY,
    wanted: /^3$/,
  },
  {
    id: 'rule',
    says: 'A colour rule may have ; in its formula and gives back the same formula.',
    matters: 'our own colour rules are known again when a table is built anew',
    sure: 'memory',
    source: MEMORY,
    wanted: /^=AND\(\$?A1[=>]1[;,] ?TRUE\)$/i,
  },
  {
    id: 'plain-text',
    says: 'A formula written into a plain-text cell stays text.',
    matters: 'names that begin with = stay names; a formula needs an automatic cell',
    sure: 'likely',
    source: MEMORY,
    wanted: /^text =1\+1$/,
  },
  {
    id: 'automatic',
    says: 'A cell without a number format gives back 0.############### or General, and General takes a format away.',
    matters: 'formats kept on a rebuild: a date typed later must show as a date',
    sure: 'likely',
    source: 'notes on oddities of a published stand-in for these services (gas-fakes)',
    wanted: /^(0\.#{15}|General|), then (0\.#{15}|General|)$/,
  },
  {
    id: 'date-format',
    says: 'The format yyyy-mm-dd;; makes a number a date.',
    matters: 'days that show nothing where they are 0',
    sure: 'memory',
    source: MEMORY,
    wanted: /^2026-04-30$/,
  },
  {
    id: 'blank',
    says: 'A formula that points at a blank cell is blank and no number.',
    matters: 'look-ups of a weight or a gain that was left blank',
    sure: 'memory',
    source: MEMORY,
    wanted: /^nothing and FALSE$/,
  },
  {
    id: 'sumproduct',
    says: 'SUMPRODUCT over a row with text is an error.',
    matters: 'the budget must not multiply text',
    sure: 'likely',
    source: 'two other spreadsheet programs on the same data',
    wanted: /^#VALUE!$/,
  },
  {
    id: 'criterion',
    says: 'COUNTIF takes "<=" with a cell joined to it that shows a day in words.',
    matters: 'counts of moves up to today',
    sure: 'likely',
    source: MEMORY,
    wanted: /^1$/,
  },
  {
    id: 'name-twice',
    says: 'Setting a named range a second time moves it.',
    matters: 'a table is found again by its name',
    sure: 'likely',
    source: 'reference of SpreadsheetApp, setNamedRange, which does not speak of a name that is there',
    wanted: /^1 name at A2$/,
  },
  {
    id: 'late-refusal',
    says: 'Values that a rule of the cell refuses are refused to a script too, at the latest when it waits for them.',
    matters: 'nothing is called written that was not',
    sure: 'documented',
    source: 'reference of SpreadsheetApp, flush: changes may be bundled',
    wanted: /^refused (at once|on waiting)$/,
  },
  {
    id: 'answers',
    says: 'The answer of a cell function is there five seconds after it was written.',
    matters: 'a table built anew right after it was written',
    sure: 'likely',
    source: 'public reports of Loading... in cells read too early',
    wanted: /(^|then )1000$/,
  },
  {
    id: 'one-cell',
    says: 'A cell function takes a range of one cell and a left-out argument.',
    matters: 'lists of one line',
    sure: 'memory',
    source: MEMORY,
    wanted: /(^|then )1000$/,
  },
  {
    id: 'error-cells',
    says: 'A cell function is called though one cell of its range is an error, and its answers spill down.',
    matters: 'one bad row of a table must not take the answers of the others',
    sure: 'memory',
    source: MEMORY,
    wanted: /(^|then )1000 and FENCE_LENGTH: .*#N\/A$/,
  },
  {
    id: 'date-argument',
    says: "A date cell reaches a cell function as midnight in the file's time zone.",
    matters: 'growth from a day on is counted from that day',
    sure: 'likely',
    source: 'guide to custom functions: dates arrive as Date',
    wanted: /(^|then )2$/,
  },
  {
    id: 'changing',
    says: 'A cell function that refers to NOW() or RAND() is not called; #ERROR! shows.',
    matters: 'a figure of a list that rests on them is written as a value',
    sure: 'likely',
    source: 'guide to custom functions; public reports of the message',
    wanted: /\d and #ERROR!$/,
  },
  {
    id: 'english-names',
    says: 'Formulas are read back with English names, whatever the language.',
    matters: "our own formulas are told from the grower's",
    sure: 'likely',
    source: 'reference of Range, getFormula: A1 notation; of languages it says nothing',
    wanted: /^=IF\(TRUE(\(\))?[;,] ?ROWS\(A2:A3\)[;,] ?FALSE(\(\))?\)$/,
  },
  {
    id: 'decimals',
    says: 'A formula takes the decimal sign of the country.',
    matters: 'a formula made in the sidebar and put into a cell',
    sure: 'likely',
    source: MEMORY,
    wanted: /^3$/,
  },
  {
    id: 'cleared-format',
    says: 'Clearing formats leaves the number format.',
    matters: 'rows that a shorter table leaves must take a day typed later',
    sure: 'documented',
    source: 'reference of Range, clearFormat',
    wanted: /^0\.00$/,
  },
  {
    id: 'chart-tabs',
    says: 'A tab that is a chart says so, every other has cells.',
    matters: 'reading a file that holds charts',
    sure: 'documented',
    source: 'reference of SpreadsheetApp, SheetType',
    wanted: /^[1-9]\d* with cells, \d+ without$/,
  },
  {
    id: 'frozen-and-hidden',
    says: 'A column can be hidden, a row and a column frozen, and all are read back.',
    matters: 'working columns and frozen names of tables of ours',
    sure: 'documented',
    source: 'reference of SpreadsheetApp, Sheet',
    wanted: /^hidden, 1 and 1 frozen$/,
  },
  {
    id: 'merged',
    says: 'A value written under a merged cell is not kept.',
    matters: 'an area with merged cells is refused',
    sure: 'memory',
    source: MEMORY,
    wanted: /^nothing$/,
  },
  {
    id: 'id',
    says: 'The file gives its id without asking for more rights.',
    matters: 'telling a copy from the original',
    sure: 'memory',
    source: MEMORY,
    wanted: /^given$/,
  },
  {
    id: 'typed-column',
    asks: 'A column that was given a type in a table takes no number format.',
    matters: 'writing over such a table is refused in words',
    sure: 'likely',
    source: 'three public questions',
  },
  {
    id: 'protected',
    asks: 'A cell that somebody else protects cannot be written.',
    matters: 'writing there is refused in words',
    sure: 'documented',
    source: 'help of Google Sheets on protected ranges',
  },
  {
    id: 'page',
    asks: 'The sidebar may run a script that it has unpacked itself; printing, downloads and a worker made from that script work there.',
    matters:
      'the sidebar, which else says that its script did not start; printing the moves, saving a drawing, planning beside the page; without a worker it plans in slices',
    sure: 'memory',
    source: MEMORY,
  },
  {
    id: 'tick',
    asks: 'One tick gives the trigger the text or value TRUE in every language; several boxes at once give none. Two ticks may wait; a third quick one then stays ticked.',
    matters: 'a tick on today’s page is a day moved in',
    sure: 'memory',
    source: MEMORY,
  },
  {
    id: 'percent',
    asks: '70 typed into a cell shown as 0% is 70 %.',
    matters: 'settings in percent',
    sure: 'memory',
    source: MEMORY,
  },
  {
    id: 'phone',
    asks: 'Typed days and ticks work in the phone app; menus and the sidebar do not show there.',
    matters: 'typing real days in the field',
    sure: 'memory',
    source: MEMORY,
  },
] as const satisfies readonly Assumption[];

export type AssumptionId = (typeof ASSUMPTIONS)[number]['id'];
