import { followAdvice } from '../../plan/follow-advice';
import { randomFarm } from '../../plan/random-farm';

/** Every change that is offered, tried by following it. */
export function adviceFollowed(farms: number): void {
  let farmsShort = 0;
  let followed = 0;
  const bad: string[] = [];
  for (let seed = 1001; farmsShort < farms && seed < 1001 + 20 * farms; seed++) {
    const plain = randomFarm(seed);
    const advice = followAdvice({ ...plain, rules: { ...plain.rules, evenness: seed % 2 === 0 ? 0 : 0.25 } });
    if (advice.length === 0) continue;
    farmsShort += 1;
    followed += advice.length;
    for (const { words, holds, isLawful } of advice) if (!holds || !isLawful) bad.push(`${seed}: ${words}`);
  }
  console.log(
    `advice on ${farmsShort} farms that fall short: ${followed} changes followed, ${bad.length} not true`,
  );
  for (const line of bad) console.log(`  ${line}`);
}
