/** What all service stand-ins of one workbook share. */
import type { Book } from '../engine/book';
import type { Area } from './area';
import type { CallGate } from './call-gate';
import type { LoadingCells, Modes } from './modes';

export type MenuItem =
  | { kind: 'item'; caption: string; functionName: string }
  | { kind: 'separator' }
  | { kind: 'menu'; menu: Menu };
export type Menu = { caption: string; items: MenuItem[] };

export type ShownHtml = { title: string; content: string; width?: number; height?: number };
export type AlertButtons = 'OK' | 'OK_CANCEL' | 'YES_NO' | 'YES_NO_CANCEL';
export type AlertAnswer = 'OK' | 'CANCEL' | 'YES' | 'NO' | 'CLOSE';

/** What a person sees of the script. The page shows it; the headless host notes it down. */
export interface UiPort {
  addMenu(menu: Menu): void;
  showSidebar(html: ShownHtml): void;
  showDialog(html: ShownHtml, isModal: boolean): void;
  alert(title: string, text: string, buttons: AlertButtons): AlertAnswer;
  toast(text: string, title: string): void;
}

export type ProtectedArea = {
  id: number;
  area: Area;
  wholeSheet: boolean;
  description: string;
  warningOnly: boolean;
  /** Somebody else's protection: the person at the keyboard may not edit there. */
  byOther: boolean;
};

export type HostState = {
  book: Book;
  gate: CallGate;
  ui: UiPort;
  /** Another one for every name of a file. */
  readonly id: string;
  title: string;
  timeZone: string;
  scriptTimeZone: string;
  now: () => Date;
  htmlFiles: Readonly<Record<string, string>>;
  /** Notes by tab and "row,column" from 0. They do not move with inserted rows. */
  notes: Map<string, Map<string, string>>;
  protections: ProtectedArea[];
  modes: Modes;
  loading: LoadingCells;
  hasCellFunction(name: string): boolean;
  /** Tabs that hold a chart and nothing else, by id. */
  chartTabs: Set<string>;
  /** Columns of tables whose type the grower has set. */
  typedColumns: Area[];
  /** Someone else holds the document lock. */
  lockHeldElsewhere: boolean;
  lockHeld: boolean;
};
