import { fallsShort } from '../../../shared/plan/explain-plan';
import { startLongestStay } from '../../../shared/plan/start-longest-stay';
import { ordinaryFarm, planned } from '../../plan/plan-again';

/** How many ordinary farms begin short of rest with the longest stay that the form starts with. */
export function startStays(farms: number): void {
  let possible = 0;
  let red = 0;
  let redAtSeven = 0;
  for (let seed = 1; seed <= farms; seed++) {
    const plain = ordinaryFarm(seed, 0.25, 1);
    const farm = (days: number) => ({ ...plain, rules: { ...plain.rules, longestStayDays: days } });
    const longest = startLongestStay(plain);
    if (longest === 14) continue;
    possible += 1;
    if (fallsShort(planned(farm(longest)))) red += 1;
    if (fallsShort(planned(farm(7)))) redAtSeven += 1;
  }
  console.log(
    `start of the longest stay, ${possible} farms with no paddock to spare: ${red} begin short of rest, ${redAtSeven} would with 7 days`,
  );
}
