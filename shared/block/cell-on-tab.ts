import { cellA1, quotedTab } from './a1';

/** A cell as people read it: Paddocks!C7, quoted only where the tab name is not a plain word. */
export function cellOnTab(tab: string, row: number, column: number): string {
  const plain = /^[\p{L}_][\p{L}\p{N}_]*$/u.test(tab);
  return `${plain ? tab : quotedTab(tab)}!${cellA1(row, column)}`;
}

/** "Land!C4: " to begin a sentence with, or nothing where the list has no such column. */
export function cellBefore(tab: string, place: { row: number; column: number } | undefined): string {
  return place ? `${cellOnTab(tab, place.row, place.column)}: ` : '';
}
