import { toInside, type UnitSystem } from '../../units/units';
import type { BitePlan, PlannedLine } from './bite-block';
import { type BiteSettings, weedsOhmMeters } from './bite-settings';
import { type Judgement, judgeLine } from './judge-line';
import { type LineVolts, lineVolts } from './line-volts';
import { wireResistance } from './wire-resistance';
import type { WireRow } from './wire-rows';
import { NET_STRING } from './wires';

export interface JudgedLine {
  readonly line: PlannedLine;
  readonly volts: LineVolts;
  readonly verdict: Judgement;
  /** Of what a grower can change, that after which a pig at the far end, in weeds, gets most; not where it is enough. */
  readonly help?: { readonly words: string; readonly volts: number };
}

/** A fence as it might be: what each way to help changes in it. */
interface Figures {
  readonly ohms: number;
  readonly weeds: number;
  readonly liveWires: number;
  readonly ohmsPerMeter: number;
}

type Way = readonly [words: string, changed: Partial<Figures>];

/** Every line of a plan by the levels that the grower set. */
export function judgePlan({ lines, wires, settings, units }: BitePlan): readonly JudgedLine[] {
  const get = (key: keyof BiteSettings): number => settings[key] ?? 0;
  const [best] = wires
    .filter(({ name }) => name !== NET_STRING)
    .sort((a, b) => ohmsOf(a, units) - ohmsOf(b, units));
  return lines.map((line): JudgedLine => {
    const wire = wires.find(({ name }) => name === line.wire);
    const figures: Figures = {
      ohms: get('ohms'),
      weeds: weedsOhmMeters(get('weeds'), units),
      liveWires: line.liveWires,
      ohmsPerMeter: wire ? ohmsOf(wire, units) : Number.NaN,
    };
    const voltsWith = ({ ohms, weeds, ...wired }: Figures): LineVolts =>
      lineVolts({ volts: get('volts'), ohms }, { meters: line.meters, ...wired }, weeds, get('pig'));
    const volts = voltsWith(figures);
    const verdict = judgeLine(volts, get('onFence'), get('delivered'));
    if (verdict === 'enough') return { line, volts, verdict };
    // A net comes with its strings.
    const otherWires: readonly Way[] = [
      ['tie in one more live wire, at both ends', { liveWires: line.liveWires + 1 }],
      ...(best && best !== wire
        ? [[`take “${best.name}”`, { ohmsPerMeter: ohmsOf(best, units) }] as const]
        : []),
    ];
    const ways: readonly Way[] = [
      ['mow the growth off the line', { weeds: Number.POSITIVE_INFINITY }],
      ['a stronger energizer or better grounding (half the inner resistance)', { ohms: figures.ohms / 2 }],
      ...(line.wire === NET_STRING ? [] : otherWires),
    ];
    const helps = ways.map(([words, changed]) => ({
      words,
      volts: voltsWith({ ...figures, ...changed }).pigInWeeds,
    }));
    const [help] = helps.sort((a, b) => b.volts - a.volts);
    return { line, volts, verdict, ...(help && { help }) };
  });
}

function ohmsOf({ typedOhms, strands }: WireRow, units: UnitSystem): number {
  return typedOhms === undefined ? wireResistance(strands) : toInside(typedOhms, 'ohmsPerLength', units);
}
