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

/** Head of each day from `inDay` to before `outDay`. */
export function headsOver(group: Herd, inDay: number, outDay: number): number[] {
  return Array.from({ length: outDay - inDay }, (_, d) => herdOn(group, inDay + d).head);
}

/** Head-days of a stay ÷ its days. */
export function meanHead(group: Herd, inDay: number, outDay: number): number {
  const heads = headsOver(group, inDay, outDay);
  return heads.reduce((sum, head) => sum + head, 0) / heads.length;
}
