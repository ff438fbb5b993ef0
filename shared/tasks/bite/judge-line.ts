import type { LineVolts } from './line-volts';

export type Judgement =
  | 'enough'
  | 'not enough when a pig touches'
  | 'not enough in weeds'
  | 'not enough even clean';

/** Whether a line bites, by the levels the grower sets; the worst finding first. */
export function judgeLine(volts: LineVolts, onFence: number, delivered: number): Judgement {
  if (volts.clean < onFence) return 'not enough even clean';
  if (volts.weeds < onFence) return 'not enough in weeds';
  return Math.min(volts.pig, volts.pigInWeeds) < delivered ? 'not enough when a pig touches' : 'enough';
}
