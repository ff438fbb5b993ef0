import { firstFew } from '../../../../shared/block/first-few';

const MOST_TABS = 30;

/** “Land”, “Pigs” */
export function tabNames(names: readonly string[]): string {
  return firstFew(
    names.map((name) => `“${name}”`),
    MOST_TABS,
  );
}
