import { restPeriod } from '../../core/rotation/rest-period';
import { PARASITE_CAUTION } from '../cautions';
import { define } from '../define';
import { DAYS_ON_PARAM, GROUPS_PARAM, PADDOCKS_PARAM } from '../params';
import { PARASITE_USE, SEVERAL_GROUPS_USE } from '../uses';

export const REST_PERIOD = define({
  name: 'REST_PERIOD',
  topic: 'rotation',
  summary: 'Days that each paddock rests in a rotation.',
  formula: 'days_on × (paddocks − groups) ÷ groups',
  params: [PADDOCKS_PARAM, DAYS_ON_PARAM, GROUPS_PARAM],
  result: { kind: 'value', label: 'rest', unit: 'days' },
  sources: [
    {
      source: 'pennState',
      certainty: 'published',
      covers: 'paddocks = rest ÷ stay + 1, solved for the rest',
    },
    SEVERAL_GROUPS_USE,
    PARASITE_USE,
  ],
  cautions: [PARASITE_CAUTION],
  examples: [
    { args: [13, 3], gives: 36 },
    { args: [12, 4, 2], gives: 20 },
  ],
  run: restPeriod,
});
