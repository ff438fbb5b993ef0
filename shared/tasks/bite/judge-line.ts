import type { LineVolts } from './line-volts';

export type Judgement = 'enough' | 'weak when a pig touches' | 'weak in weeds' | 'weak even clean';

/** Whether a line bites, by the levels the grower sets; the worst finding first. */
export function judgeLine(volts: LineVolts, onFence: number, delivered: number): Judgement {
  if (volts.clean < onFence) return 'weak even clean';
  if (volts.weeds < onFence) return 'weak in weeds';
  return Math.min(volts.pig, volts.pigInWeeds) < delivered ? 'weak when a pig touches' : 'enough';
}
