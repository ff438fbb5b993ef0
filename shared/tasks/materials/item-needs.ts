/** Need and note of every item of the list, as formula bodies over the settings and figures. */
import { roundUp } from '../formula-parts';
import { type FenceKind, fenceType } from './fence-types';
import type { FigureKey } from './figure-rows';
import type { MaterialItem } from './material-needs';
import type { MaterialsKey } from './materials-settings';

export interface NeedsOn {
  readonly set: Readonly<Record<MaterialsKey, string>>;
  readonly figure: Readonly<Record<FigureKey, string>>;
  readonly kind: FenceKind;
}

interface Need {
  readonly need: string;
  readonly note: string;
}

export function needOf(item: MaterialItem, { set, figure, kind }: NeedsOn): Need {
  const spare = `(1+${set.spares}/100)`;
  const linePosts = `(${figure.pieces}-${figure.corners})`;
  const onLine = `${linePosts}*${set.lineInsulators}`;
  const ofEach = (each: string): string => `${figure.energizers}*${each}`;
  const needs: Readonly<Record<MaterialItem, Need>> = {
    nets: {
      need: figure.pieces,
      note: 'Join them by their clips and tie the end posts; a gate is where two meet, opened with the voltage off.',
    },
    linePosts: { need: roundUp(`${linePosts}*${spare}`), note: 'With the spares.' },
    cornerPosts: { need: figure.corners, note: 'Where the line turns or another joins it.' },
    guys: {
      need: figure.corners,
      note: 'A line and peg at each corner, or the net leans in: judgement. Some come with nets.',
    },
    rolls: {
      need: roundUp(`${figure.wire}/${set.rollLength}`),
      note: 'Wire of all strands with the allowance.',
    },
    reels: {
      need: roundUp(`${figure.wire}/${set.reelLength}`),
      note: 'To wind the wire up at each move.',
    },
    insulators: {
      need: roundUp(`${set.strands}*(${figure.corners}+${onLine})*${spare}`),
      note: 'One a strand on corner posts; on line posts as set below.',
    },
    gateHandles: { need: `${set.gates}*${set.strands}`, note: 'One a strand and opening.' },
    signs: {
      need: figure.signs,
      note: 'At least 100 × 200 mm, yellow on both sides, where the public passes (IEC annex, second hand).',
    },
    energizer: {
      need: figure.energizers,
      note: 'One for each group that is out: their fences stand apart. One fence is never fed by two.',
    },
    rods: {
      need: ofEach(figure.rods),
      note: 'Do not use water pipes, building steel or a utility earth.',
    },
    clamps: { need: ofEach(figure.rods), note: 'One a rod; do not mix copper with galvanised.' },
    cable: {
      need: roundUp(ofEach(`(${set.leadOut}+${set.earthLead}+(${figure.rods}-1)*${set.rodGap})`)),
      note: 'Lead-out and ground lead of each energizer.',
    },
    tester: { need: '1', note: 'Measure the volts; do not guess them.' },
  };
  if (fenceType(kind).items.includes(item)) return needs[item];
  return { need: '0', note: 'Not for this kind of fence; what you typed stays.' };
}
