import { daysOn } from '../../core/rotation/days-on';
import { PARASITE_CAUTION } from '../cautions';
import { define } from '../define';
import { GROUPS_PARAM, PADDOCKS_PARAM, REST_DAYS_PARAM } from '../params';
import { PARASITE_USE, SEVERAL_GROUPS_USE } from '../uses';

export const DAYS_ON = define({
  name: 'DAYS_ON',
  topic: 'rotation',
  summary: 'Longest stay in a paddock that still gives the others their rest.',
  formula: 'rest_days × groups ÷ (paddocks − groups)',
  params: [PADDOCKS_PARAM, REST_DAYS_PARAM, GROUPS_PARAM],
  result: { kind: 'value', label: 'longest stay', unit: 'days' },
  sources: [
    {
      source: 'pennState',
      certainty: 'published',
      covers: 'paddocks = rest ÷ stay + 1, solved for the stay',
    },
    SEVERAL_GROUPS_USE,
    PARASITE_USE,
  ],
  cautions: [
    'Ground may give out sooner than the rest allows: look at the cover, and see STAY_DAYS.',
    PARASITE_CAUTION,
  ],
  examples: [{ args: [9, 40], gives: 5 }],
  run: daysOn,
});
