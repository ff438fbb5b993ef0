import { type Area, type SheetPort, Told } from '../port';

/** What is selected, or the sentence that says to select something. */
export function activeArea(port: SheetPort): Area & { readonly a1: string } {
  const active = port.active();
  if (!active) throw new Told('Click a cell in the sheet first.');
  return active;
}
