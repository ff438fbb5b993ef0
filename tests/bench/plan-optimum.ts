/*
 * What the planner achieves, measured: npm run optimum -- [part] [farms] [kind]
 * Without a part all are run, which takes an hour or so. Parts: optimum, planted, again, advice, start, time.
 */
import { againstOptimum, againstPlanted } from './planner/against-optimum';

const SECONDS = 20;

async function main(): Promise<void> {
  const [part, count, kind = ''] = process.argv.slice(2);
  const farms = (usual: number): number => (count ? Number(count) : usual);
  const isWanted = (name: string): boolean => part === undefined || part === name;
  if (isWanted('optimum')) await againstOptimum(farms(40), SECONDS, kind);
  if (isWanted('planted')) againstPlanted(farms(40));
}

void main();
