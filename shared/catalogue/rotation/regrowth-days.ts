import { regrowthDays } from '../../core/rotation/regrowth-days';
import { PARASITE_CAUTION } from '../cautions';
import { define } from '../define';
import { PARASITE_USE } from '../uses';

export const REGROWTH_DAYS = define({
  name: 'REGROWTH_DAYS',
  topic: 'rotation',
  summary: 'Days until forage has grown back by an amount, from growth rates month by month.',
  formula: 'growth added up day by day from start_date on, the last day as a fraction; within 730 days',
  params: [
    { kind: 'date', name: 'start_date', help: 'First day of growth, counted.' },
    {
      kind: 'list',
      name: 'monthly_growth',
      unit: 'mass per area a day',
      help: 'Growth a day in each month, 12 cells, January first.',
      min: 0,
      blanks: 'refuse',
      atLeast: 12,
      atMost: 12,
    },
    {
      kind: 'number',
      name: 'growth_needed',
      unit: 'mass per area',
      help: 'Growth to wait for, in the same mass per area.',
      above: 0,
    },
  ],
  result: { kind: 'value', label: 'days', unit: 'days' },
  sources: [
    { source: 'contract', certainty: 'definition', covers: 'adding up' },
    {
      source: 'judgement',
      certainty: 'judgement',
      covers: 'two years as the longest wait',
      unguarded: ['LONGEST_REGROWTH_DAYS 730'],
    },
    PARASITE_USE,
  ],
  cautions: [
    'Growth differs a lot between years and fields: look before you move. Rooted-up ground grows back slower.',
    PARASITE_CAUTION,
  ],
  examples: [{ args: ['2026-04-20', [[0, 0, 20, 50, 80, 60, 35, 30, 40, 25, 5, 0]], 1800], gives: 26.625 }],
  run: regrowthDays,
});
