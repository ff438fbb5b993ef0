/**
 * Opens the engine's help on a function as soon as it appears, as Sheets does at first; the engine shows only the
 * names of the arguments until its arrow is clicked.
 */
export function openHelpOnAppearing(grid: HTMLElement): void {
  const opened = new WeakSet<Element>();
  new MutationObserver(() => {
    const help = grid.querySelector('.o-formula-assistant');
    if (!help || opened.has(help)) return;
    opened.add(help);
    help.querySelector<HTMLElement>('.collapsor.collapsed')?.click();
  }).observe(grid, { childList: true, subtree: true });
}
