/** Need, unit and note of every item of the list, as formula bodies over the settings and figures. */
import { symbolOf, type UnitSystem } from '../../units/units';
import { roundUp } from '../formula-parts';
import type { FigureKey } from './figure-rows';
import type { MaterialItem } from './material-needs';
import type { MaterialsKey } from './materials-settings';

export interface NeedsOn {
  readonly units: UnitSystem;
  readonly set: Readonly<Record<MaterialsKey, string>>;
  readonly figure: Readonly<Record<FigureKey, string>>;
}

interface Need {
  readonly need: string;
  readonly unit: string;
  readonly note: string;
}

export function needOf(item: MaterialItem, { units, set, figure }: NeedsOn): Need {
  const spare = `(1+${set.spares}/100)`;
  const linePosts = `(${figure.posts}-${figure.corners})`;
  const onLine = `${linePosts}*${set.lineInsulators}`;
  const needs: Readonly<Record<MaterialItem, Need>> = {
    linePosts: { need: roundUp(`${linePosts}*${spare}`), unit: 'posts', note: 'With the spares.' },
    cornerPosts: { need: figure.corners, unit: 'posts', note: 'Where the line turns or another joins it.' },
    rolls: {
      need: roundUp(`${figure.wire}/${set.rollLength}`),
      unit: 'rolls',
      note: 'Wire of all strands with the allowance.',
    },
    reels: {
      need: roundUp(`${figure.wire}/${set.reelLength}`),
      unit: 'reels',
      note: 'To wind the wire up at each move.',
    },
    insulators: {
      need: roundUp(`${set.strands}*(${figure.corners}+${onLine})*${spare}`),
      unit: 'each',
      note: 'One a strand on corner posts; on line posts as set below.',
    },
    gateHandles: { need: `${set.gates}*${set.strands}`, unit: 'each', note: 'One a strand and opening.' },
    signs: {
      need: figure.signs,
      unit: 'signs',
      note: 'At least 100 × 200 mm, yellow on both sides, where the public passes (IEC annex, second hand).',
    },
    energizer: { need: '1', unit: 'each', note: 'One fence is never fed by two energizers.' },
    rods: {
      need: figure.rods,
      unit: 'rods',
      note: 'Do not use water pipes, building steel or a utility earth.',
    },
    clamps: { need: figure.rods, unit: 'each', note: 'One a rod; do not mix copper with galvanised.' },
    cable: {
      need: roundUp(`${set.leadOut}+${set.earthLead}+(${figure.rods}-1)*${set.rodGap}`),
      unit: symbolOf('length', units),
      note: 'Lead-out and ground lead.',
    },
    tester: { need: '1', unit: 'each', note: 'Measure the volts; do not guess them.' },
  };
  return needs[item];
}
