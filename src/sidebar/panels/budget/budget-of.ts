import { Refusal } from '../../../../shared/refusals';
import type { BudgetPlan } from '../../../../shared/tasks/budget/budget-block';
import type { StayNeeds } from '../../../../shared/tasks/budget/budget-model';
import { BUDGET_SETTINGS, type BudgetSettings } from '../../../../shared/tasks/budget/budget-settings';
import { stayNeeds } from '../../../../shared/tasks/budget/stay-needs';
import { insideSettings } from '../../../../shared/tasks/settings';

export interface Budget {
  readonly needs: readonly StayNeeds[];
  /** In inside units. */
  readonly settings: BudgetSettings;
}

/** Every stay worked out, or why one cannot be. */
export function budgetOf(plan: BudgetPlan): Budget | { readonly problem: string } {
  const settings = insideSettings(BUDGET_SETTINGS, plan.settings, plan.units);
  const needs: StayNeeds[] = [];
  for (const stay of plan.stays) {
    try {
      needs.push(stayNeeds(stay, settings));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return {
        problem: `${stay.group} in ${stay.paddock}${error.sentence('', plan.units)}. Type a daily gain in the list, or an earlier end.`,
      };
    }
  }
  return { needs, settings };
}
