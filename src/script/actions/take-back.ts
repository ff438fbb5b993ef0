import { failureSentence } from '../failure-sentence';
import { Told } from '../port';
import * as words from '../words';

/** Takes back what was begun and throws what stopped it, with the words that nothing was written; where that fails too, says where part of it may stand. */
export function takeBack(error: unknown, step: () => void, places: readonly string[]): never {
  const why = failureSentence(error);
  try {
    step();
  } catch {
    throw new Told(words.partMayStand(why, places.join(' and ')));
  }
  throw new Told(`${why} Nothing was written.`);
}
