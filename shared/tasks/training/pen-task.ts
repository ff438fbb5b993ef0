import type { BlockCell } from '../../contract';
import type { UnitSystem } from '../../units/units';
import { asking } from '../ask';
import { listedHerd } from '../listed-herd';
import type { Task } from '../task';
import { composePenBlock, PEN_BLOCK, PEN_SETTINGS, type PenSettings } from './pen-block';
import { readPen } from './read-pen';
import * as words from './words';

interface PenPlan {
  readonly settings: PenSettings;
  readonly onHand: readonly BlockCell[];
  readonly units: UnitSystem;
}

/** What a training pen takes. */
export const PEN_TASK = {
  name: PEN_BLOCK,
  what: 'the pen list',
  tabName: 'Training pen',
  next: words.VOLTS_NEXT,
  read: (book, answers) => {
    const ask = asking(book, answers, PEN_BLOCK);
    const read = ask.block && readPen(ask.block);
    const units = ask.units();
    const settings = ask.settings(PEN_SETTINGS, read?.settings, units, listedHerd(book, units)?.toTrain);
    return ask.form(() => ({ settings: settings.values, onHand: read?.onHand ?? [], units }), {
      units,
      settings,
    });
  },
  compose: ({ settings, onHand, units }, corner) => composePenBlock(settings, onHand, units, corner),
} satisfies Task<PenPlan>;
