/**
 * A formula whose result is a blank cell: the engine shows 0, Sheets shows nothing (from memory). The engine's
 * evaluator is watched: where a formula gave nothing its cell counts as empty.
 */
type Result = { value?: unknown } | unknown[];
type Formula = { execute(...values: unknown[]): Result };
type FormulaCell = { compiledFormula: Formula };
export type BlankKeeper = { computeFormulaCell(position: unknown, cell: FormulaCell): object };

export function keepBlankResults(evaluator: BlankKeeper, isOn: () => boolean): void {
  const compute = evaluator.computeFormulaCell;
  evaluator.computeFormulaCell = function computed(this: BlankKeeper, position, cell) {
    if (!isOn()) return compute.call(this, position, cell);
    let isBlank = false;
    const execute = (...values: unknown[]): Result => {
      const result = cell.compiledFormula.execute(...values);
      const one = (Array.isArray(result) ? onlyCell(result) : result) as { value?: unknown } | undefined;
      isBlank = one !== undefined && (one.value === null || one.value === undefined);
      return result;
    };
    const compiledFormula = Object.create(cell.compiledFormula, { execute: { value: execute } }) as Formula;
    const watched = Object.create(cell, { compiledFormula: { value: compiledFormula } }) as FormulaCell;
    const evaluated = compute.call(this, position, watched);
    return isBlank ? { ...evaluated, type: 'empty', value: null, formattedValue: '' } : evaluated;
  };
}

/** The cell of a result of one column and one row. */
function onlyCell([column, ...others]: unknown[]): unknown {
  return others.length === 0 && Array.isArray(column) && column.length === 1 ? column[0] : undefined;
}
