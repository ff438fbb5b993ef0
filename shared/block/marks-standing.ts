import { markOfStanding } from './memory';
import { oncePer } from './once-per';
import type { BlockContent } from './read-block';

/** The mark of everything that stands in a block. */
export const marksStanding = /* @__PURE__ */ oncePer(({ values, formulas }: BlockContent) =>
  values.map((row, r) => row.map((value, c) => markOfStanding(value, formulas[r]?.[c] ?? ''))),
);
