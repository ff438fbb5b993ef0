/** Second half of the messy workbooks; in two files, so that both cores work. */
import { it } from 'vitest';
import { buildInMessyWorkbooks, MESSY_WORKBOOKS } from './messy-workbooks';

it('builds a correct table or refuses with cells named, and leaves every other cell as it was', async () => {
  await buildInMessyWorkbooks(19991231, Math.floor(MESSY_WORKBOOKS / 2));
}, 7_200_000);
