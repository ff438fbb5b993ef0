/**
 * `npm run guards`: which constants of shared/tables does no published check guard? Each number of a table is made a fifth
 * larger in a copy of the project outside it, and the published checks run there: where all still pass, nothing guards it.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

const TABLES = 'shared/tables';
const FACTOR = 1.2;
const ENTRIES = [
  'package.json',
  'vitest.config.ts',
  'shared',
  'tests',
  'tsconfig.base.json',
  'tsconfig.json',
];

interface Constant {
  readonly file: string;
  readonly at: number;
  readonly text: string;
  readonly line: string;
}

/** Numbers of the code, not of comments, texts and names. */
function constantsOf(file: string): readonly Constant[] {
  const code = readFileSync(join(TABLES, file), 'utf8');
  const bare = code.replace(/\/\*[\s\S]*?\*\/|\/\/.*|'[^']*'/g, (skipped) => ' '.repeat(skipped.length));
  return [...bare.matchAll(/(?<![\w.])\d+(\.\d+)?(e-?\d+)?\b/g)].map(({ 0: text, index: at }) => ({
    file,
    at,
    text,
    line: code.slice(code.lastIndexOf('\n', at) + 1, code.indexOf('\n', at)).trim(),
  }));
}

function published(copy: string): boolean {
  const run = spawnSync('npx', ['vitest', 'run', 'tests/published', '--bail=1'], { cwd: copy });
  return run.status === 0;
}

function isGuarded(copy: string, { file, at, text }: Constant): boolean {
  const path = join(copy, TABLES, file);
  const code = readFileSync(path, 'utf8');
  writeFileSync(path, `${code.slice(0, at)}${Number(text) * FACTOR}${code.slice(at + text.length)}`);
  const stillPasses = published(copy);
  writeFileSync(path, code);
  return !stillPasses;
}

const copy = mkdtempSync(join(tmpdir(), 'guards-'));
try {
  for (const entry of ENTRIES) cpSync(entry, join(copy, entry), { recursive: true });
  symlinkSync(resolve('node_modules'), join(copy, 'node_modules'));
  if (!published(copy)) throw new Error('the published checks fail before anything is changed');
  const constants = readdirSync(TABLES).flatMap(constantsOf);
  const unguarded = constants.filter((constant) => !isGuarded(copy, constant));
  console.log(`${unguarded.length} of ${constants.length} constants are guarded by no published check:`);
  for (const { file, text, line } of unguarded) console.log(`${file}: ${text} in ${line}`);
} finally {
  rmSync(copy, { recursive: true });
}
