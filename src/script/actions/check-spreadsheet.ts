/**
 * "Check this spreadsheet": tries what we take for true about Google Sheets (assumptions.ts) on a tab of its own,
 * takes the tab away again, and says in plain words what holds, as text to copy.
 */
import { ASSUMPTIONS, type Assumption, type AssumptionId } from '../assumptions';
import type { ScratchTab, SheetPort } from '../port';

const SECOND = 1000;
/** 2026-04-21 counted from 1899-12-30. */
const A_DAY = 46133;
/** Round a rectangle of 200 by 300: 1000. */
const FUNCTION = '=FENCE_LENGTH(A1:A1;300;)';

type Probe = (tab: ScratchTab) => string;

/** Each tries one thing and writes down what came. Row 1 to 9 of the tab are blank before each. */
const PROBES: { readonly [Id in AssumptionId]?: Probe } = {
  semicolon: (tab) => answer(tab, '=SUM(1;2)'),
  rule: (tab) => tab.ruleAsReadBack('=AND(A1=1;TRUE)'),
  'plain-text': (tab) => {
    tab.write([['=1+1']], '@');
    return `${tab.formula() === '' ? 'text' : 'formula'} ${shown(tab.read()[0])}`;
  },
  automatic: (tab) => {
    const before = tab.format();
    tab.write([[1]], '0.00');
    tab.write([[1]], 'General');
    return `${before}, then ${tab.format()}`;
  },
  'date-format': (tab) => {
    tab.write([[A_DAY]], 'yyyy-mm-dd;;');
    return shown(tab.read()[0]);
  },
  blank: (tab) => {
    tab.write([['=A9', '=ISNUMBER(A1)']]);
    const [value, isNumber] = tab.read(1, 2);
    return `${shown(value)}, number ${shown(isNumber)}`;
  },
  sumproduct: (tab) => {
    tab.write([
      [2, 3, '=SUMPRODUCT(A1:A2*B1:B2)'],
      ['text', 4, ''],
    ]);
    return shown(tab.read(1, 3)[2]);
  },
  criterion: (tab) => {
    tab.write([[A_DAY, '=COUNTIF(A1:A1;"<="&DATE(2026;4;21))']]);
    return shown(tab.read(1, 2)[1]);
  },
  'name-twice': (tab) => tab.nameTwice(),
  'late-refusal': (tab) => tab.refusedWrite(),
  answers: (tab) => {
    tab.write([['200', FUNCTION]]);
    return [0, SECOND, 4 * SECOND]
      .map((wait) => {
        if (wait > 0) tab.sleep(wait);
        return shown(tab.read(1, 2)[1]);
      })
      .join(', then ');
  },
  'one-cell': (tab) => {
    tab.write([[200, FUNCTION]]);
    tab.sleep(2 * SECOND);
    return shown(tab.read(1, 2)[1]);
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

function answer(tab: ScratchTab, formula: string): string {
  tab.write([[formula]]);
  return shown(tab.read()[0]);
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

function checkOne({ id, says, wanted }: Assumption, tab: ScratchTab): CheckLine {
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
  const verdict =
    failed === 0
      ? 'Everything that can be tried here holds.'
      : `${failed} of ${lines.length} do not hold. Please send this text to whoever gave you the sheet: it holds nothing of your file.`;
  const words = { true: 'PASS', false: 'FAIL', 'by hand': 'NOT TRIED' } as const;
  return [
    `Sounder Sheet ${version}, check of ${today}, ${seconds} s`,
    verdict,
    '',
    ...lines.map(({ id, says, holds, got }) => {
      const came = got === '' ? '' : ` Got: ${got}.`;
      return `${words[String(holds) as keyof typeof words]}  ${id}: ${says}${came}`;
    }),
  ].join('\n');
}
