import { failureSentence } from '../failure-sentence';
import { Told } from '../port';

/** Takes back what was begun and throws what stopped it; where that fails too, says where part of it may stand. */
export function takeBack(error: unknown, step: () => void, places: readonly string[]): never {
  try {
    step();
  } catch {
    throw new Told(`${failureSentence(error)} Look at ${places.join(' and ')}: part of it may stand there.`);
  }
  throw error;
}
