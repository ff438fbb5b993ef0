/**
 * "Check this spreadsheet": tries what we take for true about Google Sheets (assumptions.ts) on a tab of its own,
 * takes the tab away again, and says in plain words what holds, as text to copy.
 */
import { DAY_FORMAT } from '../../../shared/block/day-format';
import { decimalComma } from '../../../shared/locale/decimal-comma';
import { ASSUMPTIONS, type Assumption, type AssumptionId } from '../assumptions';
import type { ScratchTab, SheetPort } from '../port';
import * as words from '../words';

const SECOND = 1000;
/** 2026-04-30 counted from 1899-12-30. */
const A_DAY = 46142;
/** A row that no probe writes to. */
const UNTOUCHED = 20;
const MONTHS = 12;
const GROWTH = Array.from({ length: MONTHS }, (_, month) => [0, 0, 0, 10, 20][month] ?? 0);
/** Round a rectangle of 200 by 300: 1000. */
const FUNCTION = '=FENCE_LENGTH(A1:A1;300;)';

type Probe = (tab: ScratchTab) => string;

/** Each tries one thing and writes down what came. The first 12 rows of the tab are blank before each. */
const PROBES: { readonly [Id in AssumptionId]?: Probe } = {
  semicolon: gives([['=SUM(1;2)']]),
  rule: (tab) => tab.ruleAsReadBack('=AND(A1=1;TRUE)'),
  'plain-text': (tab) => {
    tab.write([['=1+1']], '@');
    return `${tab.formula() === '' ? 'text' : 'formula'} ${shown(tab.read()[0])}`;
  },
  automatic: (tab) => {
    const before = tab.format(UNTOUCHED);
    tab.write([[1]], '0.00');
    tab.write([[1]], 'General');
    return `${before}, then ${tab.format()}`;
  },
  'date-format': gives([[A_DAY]], 'yyyy-mm-dd;;'),
  blank: gives([['=A9', '=ISNUMBER(A1)']]),
  sumproduct: gives([
    [2, '=SUMPRODUCT(A1:A2*C1:C2)', 3],
    ['text', '', 4],
  ]),
  criterion: gives(
    [
      [A_DAY, '=COUNTIF(A1:A2;"<="&A1)'],
      [A_DAY + 1, ''],
    ],
    DAY_FORMAT,
  ),
  'name-twice': (tab) => tab.nameTwice(),
  'late-refusal': (tab) => tab.refusedWrite(),
  answers: gives([['200', FUNCTION]]),
  'one-cell': gives([[200, FUNCTION]]),
  'error-cells': gives([
    [200, '=FENCE_LENGTH(A1:A2;300)', '=B2'],
    ['=NA()', '', ''],
  ]),
  // Ten a day in April, twenty in May: two days to thirty from the last of April, and from no other day.
  'date-argument': gives(
    [[A_DAY, '=REGROWTH_DAYS(A1;A2:L2;30)', ...Array<string>(MONTHS - 2).fill('')], GROWTH],
    DAY_FORMAT,
  ),
  changing: gives([['=INT(NOW())', '=FENCE_LENGTH(A1;300)']]),
  'english-names': (tab) => {
    tab.write([['=IF(TRUE;ROWS(A2:A3);FALSE)']]);
    return tab.formula();
  },
  decimals: (tab) => gives([[decimalComma(tab.locale()) ? '=1,5*2' : '=1.5*2']])(tab),
  'cleared-format': (tab) => {
    tab.write([[1]], '0.00');
    tab.clearFormat();
    return tab.format();
  },
  'chart-tabs': (tab) => tab.tabTypes(),
  'frozen-and-hidden': (tab) => tab.frozenAndHidden(),
  merged: (tab) => {
    tab.merge(1, 2);
    tab.write([['above', 'under']]);
    return shown(tab.read(1, 2)[1]);
  },
  id: (tab) => tab.hasId(),
};

/**
 * Writes cells, the first in that format, and tells what the formulas of the first row show, or the cell where there is
 * none: as soon as nothing loads any more, at most five seconds later.
 */
function gives(rows: readonly (readonly (string | number)[])[], format?: string): Probe {
  const [first = []] = rows;
  const asked = first.flatMap((cell, column) => (/^=/.test(String(cell)) ? [column] : []));
  return (tab) => {
    if (format !== undefined) tab.write([[first[0] ?? '']], format);
    tab.write(rows);
    const seen: string[] = [];
    for (const wait of [0, SECOND, 4 * SECOND]) {
      if (wait > 0) tab.sleep(wait);
      const row = tab.read(1, first.length);
      const look = (asked.length > 0 ? asked : [0]).map((column) => shown(row[column])).join(' and ');
      seen.push(look);
      if (!look.includes('Loading')) break;
    }
    return seen.join(', then ');
  };
}

function shown(value: unknown): string {
  if (value === '' || value === undefined) return 'nothing';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'object' ? (value as { d: string }).d : String(value);
}

export interface CheckLine {
  readonly id: string;
  readonly says: string;
  readonly holds: boolean | 'by hand';
  readonly got: string;
}

export interface CheckResult {
  readonly lines: readonly CheckLine[];
  readonly seconds: number;
}

/** Runs every probe on a tab of its own, which is gone afterwards whatever happens. */
export function checkSpreadsheet(port: SheetPort, now: () => number = Date.now): CheckResult {
  const start = now();
  const lines = port.locked(() =>
    port.onScratchTab((tab) => ASSUMPTIONS.map((assumption) => checkOne(assumption, tab))),
  );
  return { lines, seconds: Math.round((now() - start) / SECOND) };
}

function checkOne({ id, says = words.BY_HAND, wanted }: Assumption, tab: ScratchTab): CheckLine {
  const probe = PROBES[id as AssumptionId];
  if (!probe || !wanted) return { id, says, holds: 'by hand', got: '' };
  try {
    tab.empty();
    const got = probe(tab);
    return { id, says, holds: wanted.test(got), got };
  } catch (error) {
    return {
      id,
      says,
      holds: false,
      got: `refused: ${error instanceof Error ? error.message : String(error)}`,
    };
  }
}

/** The result as text to copy. Nothing of what stands in the file is in it. */
export function checkText({ lines, seconds }: CheckResult, version: string, today: string): string {
  const failed = lines.filter(({ holds }) => holds === false).length;
  const verdict = failed === 0 ? words.ALL_HOLDS : words.someFail(failed, lines.length);
  const marks = { true: 'PASS', false: 'FAIL', 'by hand': 'NOT TRIED' } as const;
  return [
    words.checkTitle(version, today, seconds),
    verdict,
    '',
    ...lines.map(({ id, says, holds, got }) => {
      const came = got === '' ? '' : ` Got: ${got}.`;
      return `${marks[String(holds) as keyof typeof marks]}  ${id}: ${says}${came}`;
    }),
  ].join('\n');
}
