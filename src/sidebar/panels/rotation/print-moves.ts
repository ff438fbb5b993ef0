/** The list for the barn door in a window of its own, ready to print. */
import type { BarnDoorList } from '../../../../shared/table/barn-door-list';

const STYLE = `
  body { font: 12pt/1.35 system-ui, sans-serif; margin: 1.5cm; }
  h1 { font-size: 16pt; }
  table { border-collapse: collapse; width: 100%; }
  th, td { border: 1px solid #444; padding: 3pt 5pt; text-align: left; vertical-align: top; }
  tr { break-inside: avoid; }
  @media print { button { display: none; } body { margin: 0; } }
`;

const LEAVES = 'off the pasture';
const HEADS = ['Done', 'Day', 'Group', 'From', 'To', 'Days', 'Carry'];

/** Fills a window that is open and empty. */
export function printMoves(opened: Window, list: BarnDoorList): void {
  const page = opened.document;
  page.title = list.title;
  page.documentElement.lang = 'en';
  const add = (parent: Element, tag: string, text = ''): HTMLElement => {
    const element = page.createElement(tag);
    element.textContent = text;
    parent.append(element);
    return element;
  };
  add(page.head, 'style', STYLE);
  add(page.body, 'h1', list.title);
  add(page.body, 'button', 'Print').addEventListener('click', () => opened.print());
  const table = add(page.body, 'table');
  const head = add(add(table, 'thead'), 'tr');
  for (const text of HEADS) add(head, 'th', text);
  const body = add(table, 'tbody');
  for (const move of list.moves) {
    const row = add(body, 'tr');
    const day = `${move.weekday} ${move.date}`;
    const where = move.to === undefined ? [LEAVES, ''] : [move.to, String(move.days)];
    const cells = ['☐', day, move.group, move.from, ...where, move.carry.join('; ')];
    for (const text of cells) add(row, 'td', text);
  }
  const reminders = add(page.body, 'ul');
  for (const text of list.reminders) add(reminders, 'li', text);
}
