/** Loads the engine in Node, once, and keeps it from chatting on the console. */
import type { Engine } from './engine';
import { forgetScreen } from './header-positions';
import { addMissingBuiltIns, prepareEngine } from './prepare-engine';

/** Every line of the engine's own timing chatter begins like this. */
const CHATTER =
  /^(#{3,}|### Loading|##### Model|Data loaded|Data migrated|cells imported|evaluate |Replayed|Model created|START$|[A-Z]+(_[A-Z]+)+$)/;

let loading: Promise<Engine> | undefined;

export function loadEngine(): Promise<Engine> {
  loading ??= load();
  return loading;
}

async function load(): Promise<Engine> {
  addMissingBuiltIns();
  const debug = console.debug.bind(console);
  console.debug = (...words: unknown[]) => {
    if (!CHATTER.test(String(words[0]))) debug(...words);
  };
  const path = '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
  const engine = (await import(/* @vite-ignore */ path)) as Engine;
  prepareEngine(engine);
  forgetScreen(engine);
  return engine;
}
