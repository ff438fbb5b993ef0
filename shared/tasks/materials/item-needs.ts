/** Need and note of every item of the list, as formula bodies over the settings and figures. */
import { roundUp } from '../formula-parts';
import { type FenceKind, fenceType } from './fence-types';
import type { FigureKey } from './figure-rows';
import type { MaterialItem } from './material-needs';
import type { MaterialsKey } from './materials-settings';
import * as words from './words';

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
      note: words.NETS_NOTE,
    },
    linePosts: { need: roundUp(`${linePosts}*${spare}`), note: 'With the spares.' },
    cornerPosts: { need: figure.corners, note: words.CORNERS_NOTE },
    guys: {
      need: figure.corners,
      note: words.GUYS_NOTE,
    },
    rolls: {
      need: roundUp(`${figure.wire}/${set.rollLength}`),
      note: words.WIRE_NOTE,
    },
    reels: {
      need: roundUp(`${figure.wire}/${set.reelLength}`),
      note: words.REELS_NOTE,
    },
    insulators: {
      need: roundUp(`${set.strands}*(${figure.corners}+${onLine})*${spare}`),
      note: words.INSULATORS_NOTE,
    },
    gateHandles: { need: ofEach(`${set.gates}*${set.strands}`), note: words.GATES_NOTE },
    signs: {
      need: figure.signs,
      note: words.SIGNS_NOTE,
    },
    energizer: {
      need: figure.energizers,
      note: words.ENERGIZER_NOTE,
    },
    rods: {
      need: ofEach(figure.rods),
      note: words.RODS_NOTE,
    },
    clamps: { need: ofEach(figure.rods), note: words.CLAMPS_NOTE },
    cable: {
      need: roundUp(ofEach(`(${set.leadOut}+${set.earthLead}+(${figure.rods}-1)*${set.rodGap})`)),
      note: words.LEAD_NOTE,
    },
    tester: { need: '1', note: words.TESTER_NOTE },
  };
  if (fenceType(kind).items.includes(item)) return needs[item];
  return { need: '0', note: words.NOT_COUNTED };
}
