import type { BlockInfo, TabContent } from '../contract';
import { cellOnTab } from './cell-on-tab';
import { isInArea } from './is-in-area';
import { pointsInto, referencesIn } from './references';

/** A reference into a block, from a formula of the grower's. Rows are the sheet's, counted from 1. */
export interface PointingCell {
  /** Where the formula stands: "Sums!B4". */
  readonly cell: string;
  /** Rows of the block that it refers to. */
  readonly firstRow: number;
  readonly lastRow: number;
  /** Last row that the formula names, below the block too; Infinity where it names none, as in G5:G. */
  readonly reachesRow: number;
}

/**
 * References into the block `info` from formulas outside it, one entry each. Tables of ours (`ours`) link to one
 * another on purpose and are written anew themselves, or look up by name, so formulas in them are left out.
 */
export function pointingCells(
  tabs: readonly TabContent[],
  info: BlockInfo,
  ours: readonly BlockInfo[],
): readonly PointingCell[] {
  const tabName = info.tab.replace(/'/g, "''").toLowerCase();
  return tabs.flatMap(({ name, formulas }) => {
    // Most formulas name no tab of ours: a look for its name is much quicker than reading them.
    const mayPoint = (formula: string): boolean =>
      formula !== '' && (name === info.tab || formula.toLowerCase().includes(tabName));
    const areas = [info, ...ours].filter((area) => area.tab === name);
    return formulas.flatMap((row, r) =>
      row.flatMap((formula, c) => {
        if (!mayPoint(formula) || areas.some((area) => isInArea(area, r + 1, c + 1))) return [];
        const cell = cellOnTab(name, r + 1, c + 1);
        return referencesIn(formula)
          .filter((reference) => pointsInto(reference, name, info))
          .map(({ rows: [first, last] }) => ({
            cell,
            firstRow: Math.max(first, info.row),
            lastRow: Math.min(last, info.row + info.rows - 1),
            reachesRow: last,
          }));
      }),
    );
  });
}
