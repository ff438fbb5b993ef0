/** Many messy workbooks in one go, with the counts printed at the end. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { scriptText } from '../tasks/script-text';
import { type Kind, messyRun } from './messy-run';
import { messyWorkbook } from './messy-workbook';

/** How many workbooks in all; more for a long night: SOUNDER_FUZZ=20000. */
export const MESSY_WORKBOOKS = Number(process.env.SOUNDER_FUZZ ?? 1000);

/** Builds in `count` workbooks. On a failure fast-check prints the seed and the path that lead straight to it. */
export async function buildInMessyWorkbooks(seed: number, count: number): Promise<void> {
  const codeJs = await scriptText();
  const counts: Record<Kind, number> = {
    written: 0,
    'no plan': 0,
    'refused, cell named': 0,
    'place taken, cell named': 0,
  };
  let paddocks = 0;
  await fc.assert(
    fc.asyncProperty(messyWorkbook, async (messy) => {
      counts[await messyRun(messy, codeJs)] += 1;
      paddocks = Math.max(paddocks, messy.farm.paddocks.length);
    }),
    {
      numRuns: count,
      seed,
      endOnFailure: true,
      ...(process.env.SOUNDER_PATH && { path: process.env.SOUNDER_PATH }),
    },
  );
  const parts = Object.entries(counts).map(([kind, times]) => `${kind} ${times}`);
  console.log(`messy workbooks: ${count} tried, 0 lost; ${parts.join('; ')}; up to ${paddocks} paddocks`);
  // A season without a plan is rare: nearly every farm gets one, be it one that falls short.
  const { 'no plan': _, ...seen } = counts;
  for (const times of Object.values(seen)) if (count >= 400) expect(times).toBeGreaterThan(0);
}
