/** Property tests try the same cases everywhere; SOUNDER_SEED tries others. */
import fc from 'fast-check';

const SEED = 20260401;

fc.configureGlobal({ seed: Number(process.env.SOUNDER_SEED ?? SEED) });
