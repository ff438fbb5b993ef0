import { paddocksNeeded } from '../../core/rotation/paddocks-needed';
import { PARASITE_CAUTION } from '../cautions';
import { define } from '../define';
import { DAYS_ON_PARAM, GROUPS_PARAM, REST_DAYS_PARAM } from '../params';
import { PARASITE_USE, SEVERAL_GROUPS_USE } from '../uses';

export const PADDOCKS_NEEDED = define({
  name: 'PADDOCKS_NEEDED',
  topic: 'rotation',
  summary: 'Paddocks that give each one its rest.',
  formula: 'groups × (rest_days ÷ days_on + 1), rounded up',
  params: [REST_DAYS_PARAM, DAYS_ON_PARAM, GROUPS_PARAM],
  result: { kind: 'value', label: 'paddocks', unit: 'paddocks' },
  sources: [
    { source: 'pennState', certainty: 'published', covers: 'paddocks = rest ÷ stay + 1, rounded up' },
    SEVERAL_GROUPS_USE,
    PARASITE_USE,
  ],
  cautions: [PARASITE_CAUTION],
  examples: [
    { args: [35, 3], gives: 13 },
    { args: [40, 5, 2], gives: 18 },
  ],
  run: paddocksNeeded,
});
