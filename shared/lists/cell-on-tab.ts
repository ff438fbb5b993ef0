import { cellA1, quotedTab } from '../block/a1';

/** A cell as people read it: Paddocks!C7, quoted only where the tab name is not a plain word. */
export function cellOnTab(tab: string, row: number, column: number): string {
  const plain = /^[\p{L}_][\p{L}\p{N}_]*$/u.test(tab);
  return `${plain ? tab : quotedTab(tab)}!${cellA1(row, column)}`;
}
