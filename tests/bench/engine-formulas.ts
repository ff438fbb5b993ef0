/** The same arithmetic as plain formulas of the preview's spreadsheet engine, one in each of ten thousand rows. */
import { loadEngine } from '../../src/preview/engine/load-engine';
import { cell } from '../cell';
import { CASES, ROWS } from './cases';
import { shortestMilliseconds } from './measure';

/** Formulas over columns A, B, C …, which hold the range arguments of the case in their order. */
const FORMULAS: Readonly<Record<string, string>> = {
  FENCE_LENGTH: '=2*(A#+B#)*2',
  POST_COUNT: '=2*ROUNDUP(A#/C#-1E-9,0)+2*ROUNDUP(B#/C#-1E-9,0)',
  STOCKING_DENSITY: '=A#*C#/B#',
  ANIMAL_UNITS: '=A#*B#/1000',
  PIG_WEIGHT: '=A#+C#*B#',
  REST_PERIOD: '=B#*(A#-1)',
  STAY_DAYS: '=2*(D#*A#/B#)/(C#+SQRT(C#^2+2*E#*(D#*A#/B#)))',
};

const LETTERS = 'ABCDE';

export async function benchEngineFormulas(): Promise<void> {
  const engine = await loadEngine();
  console.log(`\nPlain formulas of the preview's engine, ${ROWS} rows, milliseconds of one recalculation`);
  console.log('function           formulas   one call   formulas ÷ one call');
  for (const [name, formula] of Object.entries(FORMULAS)) {
    const found = CASES.find((candidate) => candidate.name === name);
    if (!found) throw new Error(`no case ${name}`);
    const columns = found.ranges.map((at) => found.args[at] as number[][]);
    const cells: Record<string, string> = {};
    for (let r = 0; r < ROWS; r++) {
      columns.forEach((column, i) => {
        cells[`${LETTERS[i]}${r + 1}`] = String(column[r]![0]);
      });
      cells[`H${r + 1}`] = formula.replaceAll('#', String(r + 1));
    }
    const model = new engine.Model({ sheets: [{ id: 's', colNumber: 10, rowNumber: ROWS, cells }] });
    const last = model.getters.getEvaluatedCell({ sheetId: 's', col: 7, row: ROWS - 1 });
    const ours = (cell(name, ...found.args) as number[][])[ROWS - 1]![0]!;
    if (Math.abs(Number(last.value) - ours) > 1e-9 * Math.abs(ours)) {
      throw new Error(`${name}: the engine says ${last.value}, the function ${ours}`);
    }
    const formulas = shortestMilliseconds(() => model.dispatch('EVALUATE_CELLS'), 3);
    const oneCall = shortestMilliseconds(() => cell(name, ...found.args));
    console.log(
      `${name.padEnd(17)}${formulas.toFixed(1).padStart(10)}${oneCall.toFixed(2).padStart(11)}${(formulas / oneCall).toFixed(0).padStart(22)}`,
    );
  }
}
