import type { PlanGroup } from './model';

type Herd = Pick<PlanGroup, 'head' | 'weightKg' | 'weighedOn' | 'herd'>;

/** Head of a group on a day, and its last weighing by then: of the herd log where that says it, else of the list. */
export function herdOn(group: Herd, day: number): Pick<PlanGroup, 'head' | 'weightKg' | 'weighedOn'> {
  const { head, weightKg, weighedOn, herd = [] } = group;
  return herd.reduce(
    (known, step) =>
      step.day > day
        ? known
        : {
            head: step.head ?? known.head,
            ...(step.weightKg === undefined
              ? { weightKg: known.weightKg, weighedOn: known.weighedOn }
              : { weightKg: step.weightKg, weighedOn: step.day }),
          },
    { head, weightKg, weighedOn },
  );
}
