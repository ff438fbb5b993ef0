/** The script's own menus in the top bar, usable by keyboard: arrows, Escape, Enter. */
import type { Menu, MenuItem } from '../service/host-state';
import { element } from './page-globals';

type Run = (functionName: string) => void;

export function clearMenus(): void {
  element('menus').replaceChildren();
}

export function showMenu(menu: Menu, run: Run): void {
  const holder = document.createElement('div');
  holder.className = 'menu';
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'menu-button';
  button.textContent = `${menu.caption} ▾`;
  button.setAttribute('aria-label', menu.caption);
  button.setAttribute('aria-haspopup', 'menu');
  button.setAttribute('aria-expanded', 'false');
  const list = document.createElement('div');
  list.className = 'menu-list';
  list.setAttribute('role', 'menu');
  list.setAttribute('aria-label', menu.caption);
  list.hidden = true;

  const setOpen = (isOpen: boolean): void => {
    list.hidden = !isOpen;
    button.setAttribute('aria-expanded', String(isOpen));
    if (isOpen) list.querySelector('button')?.focus();
  };
  const choose: Run = (functionName) => {
    setOpen(false);
    button.focus();
    run(functionName);
  };
  for (const item of menu.items) addItem(list, item, choose);
  button.addEventListener('click', () => setOpen(list.hidden !== false));
  holder.addEventListener('keydown', (event) => moveByKey(event, list, button, setOpen));
  holder.addEventListener('focusout', (event) => {
    if (!holder.contains(event.relatedTarget as Node | null)) setOpen(false);
  });
  holder.append(button, list);
  element('menus').append(holder);
}

function addItem(list: HTMLElement, item: MenuItem, choose: Run): void {
  if (item.kind === 'separator') {
    const line = document.createElement('div');
    line.className = 'menu-line';
    line.setAttribute('role', 'separator');
    list.append(line);
    return;
  }
  if (item.kind === 'menu') {
    const caption = document.createElement('div');
    caption.className = 'menu-caption';
    caption.setAttribute('role', 'presentation');
    caption.textContent = item.menu.caption;
    list.append(caption);
    for (const inner of item.menu.items) addItem(list, inner, choose);
    return;
  }
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'menu-item';
  button.setAttribute('role', 'menuitem');
  button.textContent = item.caption;
  button.addEventListener('click', () => choose(item.functionName));
  list.append(button);
}

function moveByKey(
  event: KeyboardEvent,
  list: HTMLElement,
  button: HTMLElement,
  setOpen: (isOpen: boolean) => void,
): void {
  const items = [...list.querySelectorAll('button')];
  const at = items.indexOf(document.activeElement as HTMLButtonElement);
  const steps: Record<string, number> = { ArrowDown: 1, ArrowUp: -1 };
  const step = steps[event.key];
  if (event.key === 'Escape' && !list.hidden) {
    setOpen(false);
    button.focus();
  } else if (step !== undefined) {
    event.preventDefault();
    if (list.hidden) setOpen(true);
    else items[(at + step + items.length) % items.length]?.focus();
  }
}
