/** What a fence costs to build, and what owning it costs a year. In the grower's own money. */

export interface CostLine {
  readonly quantity: number;
  readonly price: number;
}

/** First cost of a fence: Σ quantity × price, labour among the lines. Source: definition. */
export function firstCost(lines: readonly CostLine[]): number {
  return lines.reduce((sum, { quantity, price }) => sum + quantity * price, 0);
}

export interface YearlyCost {
  readonly depreciation: number;
  readonly interest: number;
  readonly upkeep: number;
  readonly total: number;
}

/**
 * Cost of owning a fence for a year.
 *
 *   depreciation = first cost ÷ life; interest = rate × first cost ÷ 2 (half of it is tied up on average);
 *   upkeep = share × first cost
 *
 * No value is left at the end. Rates and shares are fractions a year, life in years, above 0.
 * Source: Iowa State University Extension, "Estimated costs for livestock fencing" (FM-1855), yearly ownership table;
 * that its interest is 8 % on half the first cost was worked back from its printed rows.
 */
export function yearlyCost(
  cost: number,
  lifeYears: number,
  upkeepShare: number,
  interestRate: number,
): YearlyCost {
  const depreciation = cost / lifeYears;
  const interest = (interestRate * cost) / 2;
  const upkeep = upkeepShare * cost;
  return { depreciation, interest, upkeep, total: depreciation + interest + upkeep };
}
