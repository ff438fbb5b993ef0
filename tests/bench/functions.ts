/** Each cell function over ten thousand rows: one call, single calls, and the same arithmetic in a bare loop. */
import { cell } from '../cell';
import { type BenchCase, CASES, ROWS, SINGLE_ONLY } from './cases';
import { shortestMilliseconds } from './measure';

/** One call of any arithmetic function stays within this many times the bare loop. */
export const WITHIN = 10;

export interface FunctionTimes {
  readonly name: string;
  readonly oneCall: number;
  readonly singleCalls: number;
  readonly bare: number;
}

export function timeFunction({ name, args, ranges, bare }: BenchCase): FunctionTimes {
  const single = (): unknown => {
    let last: unknown;
    for (let r = 0; r < ROWS; r++) {
      last = cell(name, ...args.map((arg, i) => (ranges.includes(i) ? (arg as number[][])[r]![0] : arg)));
    }
    return last;
  };
  return {
    name,
    oneCall: shortestMilliseconds(() => cell(name, ...args)),
    singleCalls: shortestMilliseconds(single, 5),
    bare: shortestMilliseconds(bare),
  };
}

export function benchFunctions(): void {
  console.log(`Cell functions, ${ROWS} rows, milliseconds (shortest run); ratios against the bare loop\n`);
  console.log('function           one call   single calls   bare loop   one call ÷ bare   single ÷ bare');
  for (const benchCase of CASES) {
    const { name, oneCall, singleCalls, bare } = timeFunction(benchCase);
    const ratio = oneCall / bare;
    const note = ratio <= WITHIN ? '' : benchCase.heavy ? '  (not plain arithmetic)' : `  OVER ${WITHIN}`;
    console.log(
      `${name.padEnd(17)}${fixed(oneCall, 10)}${fixed(singleCalls, 15)}${fixed(bare, 12)}${fixed(ratio, 18)}${fixed(singleCalls / bare, 16)}${note}`,
    );
  }
  console.log('\nFunctions that take lists only or answer a list, microseconds a call');
  for (const { name, args } of SINGLE_ONLY) {
    const thousand = shortestMilliseconds(() => {
      for (let i = 0; i < 1000; i++) cell(name, ...args);
    }, 5);
    console.log(`${name.padEnd(17)}${fixed(thousand, 10)}`);
  }
}

function fixed(value: number, width: number): string {
  return value.toFixed(2).padStart(width);
}
