import { LARCH_VALE } from './larch-vale';
import { MARROW_CREEK } from './marrow-creek';
import type { SampleFarm } from './sample-farm';

export const SAMPLE_FARMS: readonly SampleFarm[] = [MARROW_CREEK, LARCH_VALE];
