import { fenceVoltage } from '../../core/energizer/fence-voltage';

export interface Energizer {
  /** Without load. */
  readonly volts: number;
  /** Inner resistance with its ground, Ω. */
  readonly ohms: number;
}

export interface BiteLine {
  readonly name: string;
  readonly meters: number;
  /** Live wires, tied together at both ends. */
  readonly liveWires: number;
  /** One wire, Ω/m. */
  readonly ohmsPerMeter: number;
}

export interface LineVolts {
  readonly clean: number;
  readonly weeds: number;
  /** With a pig at the far end, the fence clean and in weeds: what the pig gets. */
  readonly pig: number;
  readonly pigInWeeds: number;
}

/**
 * Volts at the far end of a line in four states. Equal wires tied together share the current: Ω per metre ÷ wires.
 * weedsOhmMeters is the resistance to earth of one metre of line; pigOhms the pig's.
 * A steady planning estimate, see fenceVoltage.
 */
export function lineVolts(
  energizer: Energizer,
  line: Omit<BiteLine, 'name'>,
  weedsOhmMeters: number,
  pigOhms: number,
): LineVolts {
  const ohms = line.ohmsPerMeter / line.liveWires;
  const at = (leak: number | undefined, touch: number | undefined): number =>
    fenceVoltage(energizer.volts, energizer.ohms, line.meters, ohms, leak, touch);
  return {
    clean: at(undefined, undefined),
    weeds: at(weedsOhmMeters, undefined),
    pig: at(undefined, pigOhms),
    pigInWeeds: at(weedsOhmMeters, pigOhms),
  };
}
