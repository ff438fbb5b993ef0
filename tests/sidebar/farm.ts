/** An invented farm under its own odd headings, and ways to spoil it. */
import type { WireCell } from '../../shared/contract';
import { FakeSheet, tab } from './fake-sheet';

export const PADDOCK_ROWS: readonly (readonly WireCell[])[] = [
  ['Thistle Bank: land'],
  [],
  ['Field name', 'Size (acres)', 'Usable from', 'Borders'],
  ['North 1', 0.6, '', 'North 2'],
  ['North 2', 0.55, '', 'North 1, North 3'],
  ['North 3', 0.5, '', 'North 2, Brook 4'],
  ['Brook 4', 0.7, '', 'North 3, Brook 5'],
  ['Brook 5', 0.65, '', 'Brook 4, Hay 6'],
  ['Hay 6', 1.1, { d: '2026-07-10' }, 'Brook 5, Oak 7'],
  ['Oak 7', 0.8, '', 'Hay 6, Oak 8'],
  ['Oak 8', 0.75, '', 'Oak 7, Oak 9'],
  ['Oak 9', 0.7, '', 'Oak 8, North 1'],
  ['Total', 6.35, '', ''],
];

/** Of the group list. */
export const PIG_HEADINGS = [
  'Herd',
  'No. of pigs',
  'Avg weight (lb)',
  'Weighed',
  'ADG (lb)',
  'Rotation from',
  'Ship date',
];

/** One group that has land enough. */
export const PIG_ROWS: readonly (readonly WireCell[])[] = [
  PIG_HEADINGS,
  ['Early', 9, 60, { d: '2026-04-28' }, 1.4, { d: '2026-05-02' }, { d: '2026-08-01' }],
];

/** Two groups for whose 40 days of rest the land does not suffice: 8 open paddocks × 7 days ÷ 2 groups are 28. */
export const CROWDED_PIG_ROWS: readonly (readonly WireCell[])[] = [
  ...PIG_ROWS,
  ['Late', 6, 45, { d: '2026-05-10' }, '', { d: '2026-05-10' }, { d: '2026-07-05' }],
];

export function farmSheet(paddocks = PADDOCK_ROWS, pigs = PIG_ROWS): FakeSheet {
  return new FakeSheet([tab('Land', paddocks), tab('Pigs', pigs), tab('Notes', [['']])]);
}
