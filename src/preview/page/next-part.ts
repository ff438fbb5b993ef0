/** F6 goes round the parts of the page, as in browsers and office programs: menus, sidebar, grid. */
import { element } from './page-globals';

/** The grid keeps Tab for itself, so that without another key nobody could leave it. */
export function goToNextPart(): void {
  const frame = element('sidebar').querySelector('iframe');
  const parts = [
    { holds: element('menus'), focus: () => element('menus').querySelector<HTMLElement>('button')?.focus() },
    { holds: element('sidebar'), focus: () => frame?.contentWindow?.focus() },
    { holds: element('grid'), focus: focusGrid },
  ].filter(({ holds }) => !holds.hidden);
  const here = parts.findIndex(({ holds }) => holds.contains(document.activeElement));
  parts[(here + 1) % parts.length]?.focus();
}

export function focusGrid(): void {
  document.querySelector<HTMLElement>('.o-grid')?.focus();
}

export function listenForNextPart(target: Window): void {
  target.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6' || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopPropagation();
      goToNextPart();
    },
    { capture: true },
  );
}
