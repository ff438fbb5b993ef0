/** Runs before the engine's own script: built-ins it misses in older browsers, and quiet instead of its chatter. */
import { addMissingBuiltIns } from '../engine/prepare-engine';

addMissingBuiltIns();
console.debug = () => {};
