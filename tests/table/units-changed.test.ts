/** Other units for a table that stands are told before it is built anew. */
import { expect, it } from 'vitest';
import { unitsChanged } from '../../shared/table/units-changed';

it('says from what to what, and nothing where the units stay or no table stood', () => {
  expect(unitsChanged('US', 'metric').join(' ')).toContain('changes from lb and ac to kg and ha');
  expect(unitsChanged('metric', 'US').join(' ')).toContain('changes from kg and ha to lb and ac');
  expect(unitsChanged('US', 'US')).toEqual([]);
  expect(unitsChanged(undefined, 'US')).toEqual([]);
});
