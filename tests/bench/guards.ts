/**
 * `npm run guards`: which figures does no published check guard? Each number of shared/tables and each named number of
 * shared/core is made a fifth larger in a copy of the project outside it, and the published checks run there: where all
 * still pass, nothing guards it. Fails where that is not what the catalogue says (`unguarded`), from which README, help and
 * list of sources are printed, and where it is more than a third of all.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { CATALOGUE } from '../../shared/catalogue/index';

const TABLES = 'shared/tables';
/** Its calendar is definitions alone. */
const CORE = ['fence', 'energizer', 'herd', 'rotation', 'training'].map((topic) => `shared/core/${topic}`);
/** Smaller named numbers of the core are allowances for rounding. */
const LEAST_FIGURE = 1e-6;
const FACTOR = 1.2;
const MOST_UNGUARDED = 1 / 3;
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
  /** As the catalogue calls it: the constant that it stands in, and the number. */
  readonly name: string;
}

const filesOf = (folder: string): readonly string[] => readdirSync(folder).map((file) => join(folder, file));

/** Numbers of the code, not of comments, texts and names. */
function constantsOf(file: string): readonly Constant[] {
  const code = readFileSync(file, 'utf8');
  const bare = code.replace(/\/\*[\s\S]*?\*\/|\/\/.*|'[^']*'/g, (skipped) => ' '.repeat(skipped.length));
  return [...bare.matchAll(/(?<![\w.])\d+(\.\d+)?(e-?\d+)?\b/g)].map(({ 0: text, index: at }) => ({
    file,
    at,
    text,
    line: code.slice(code.lastIndexOf('\n', at) + 1, code.indexOf('\n', at)).trim(),
    name: `${[...code.slice(0, at).matchAll(/const (\w+)/g)].pop()?.[1]} ${text}`,
  }));
}

const isNamedFigure = ({ line, text }: Constant): boolean =>
  /^(export )?const [A-Z][A-Z_]+ = /.test(line) && Number(text) > LEAST_FIGURE;

function published(copy: string): boolean {
  const run = spawnSync('npx', ['vitest', 'run', 'tests/published', '--bail=1'], { cwd: copy });
  return run.status === 0;
}

function isGuarded(copy: string, { file, at, text }: Constant): boolean {
  const path = join(copy, file);
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
  const constants = [
    ...filesOf(TABLES).flatMap(constantsOf),
    ...CORE.flatMap(filesOf).flatMap(constantsOf).filter(isNamedFigure),
  ];
  const unguarded = constants.filter((constant) => !isGuarded(copy, constant));
  console.log(`${unguarded.length} of ${constants.length} constants are guarded by no published check:`);
  for (const { file, name } of unguarded) console.log(`${file}: ${name}`);
  const found = new Set(unguarded.map(({ name }) => name));
  const told = new Set(CATALOGUE.flatMap(({ sources }) => sources.flatMap((use) => use.unguarded ?? [])));
  const faults = [
    ...[...found].filter((name) => !told.has(name)).map((name) => `the catalogue does not say so of ${name}`),
    ...[...told].filter((name) => !found.has(name)).map((name) => `the catalogue says so of ${name}`),
    ...(unguarded.length > constants.length * MOST_UNGUARDED ? ['more than a third'] : []),
  ];
  for (const fault of faults) console.log(`FAIL: ${fault}`);
  process.exitCode = faults.length > 0 ? 1 : 0;
} finally {
  rmSync(copy, { recursive: true });
}
