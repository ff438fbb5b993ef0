/*
 * What the planner achieves, measured: npm run optimum -- [part] [farms] [kind]
 * Without a part all are run, which takes an hour or so. Parts: optimum, planted, again, advice, start, time.
 */
import { adviceFollowed } from './planner/advice-followed';
import { againstOptimum, againstPlanted } from './planner/against-optimum';
import { plannedAgain } from './planner/planned-again';
import { startStays } from './planner/start-stays';
import { times } from './planner/times';

const SECONDS = 60;

async function main(): Promise<void> {
  const [part, count, kind = ''] = process.argv.slice(2);
  const farms = (usual: number): number => (count ? Number(count) : usual);
  const isWanted = (name: string): boolean => part === undefined || part === name;
  if (isWanted('optimum')) await againstOptimum(farms(40), SECONDS, kind);
  if (isWanted('planted')) againstPlanted(farms(40));
  if (isWanted('again')) await plannedAgain(farms(50), SECONDS);
  if (isWanted('advice')) adviceFollowed(farms(100));
  if (isWanted('start')) startStays(farms(60));
  if (isWanted('time')) times();
}

void main();
