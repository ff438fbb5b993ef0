/** SpreadsheetApp.getUi(): menus, sidebar, dialogs, alerts. */
import { type CallGate, GATE, guardService } from './call-gate';
import type { AlertAnswer, AlertButtons, HostState, Menu as MenuData } from './host-state';
import { HtmlOutput } from './html-service';
import { wrongSignature } from './refusals';

export class Menu {
  readonly [GATE]: CallGate;
  readonly #state: HostState;
  readonly #menu: MenuData;

  constructor(state: HostState, caption: string) {
    this[GATE] = state.gate;
    this.#state = state;
    this.#menu = { caption: String(caption), items: [] };
  }
  addItem(caption: string, functionName: string): this {
    this.#menu.items.push({ kind: 'item', caption: String(caption), functionName: String(functionName) });
    return this;
  }
  addSeparator(): this {
    this.#menu.items.push({ kind: 'separator' });
    return this;
  }
  addToUi(): void {
    this.#state.ui.addMenu(this.#menu);
  }
}

const BUTTON_SETS: readonly AlertButtons[] = ['OK', 'OK_CANCEL', 'YES_NO', 'YES_NO_CANCEL'];

export class Ui {
  readonly [GATE]: CallGate;
  readonly Button = { OK: 'OK', CANCEL: 'CANCEL', YES: 'YES', NO: 'NO', CLOSE: 'CLOSE' } as const;
  readonly ButtonSet = {
    OK: 'OK',
    OK_CANCEL: 'OK_CANCEL',
    YES_NO: 'YES_NO',
    YES_NO_CANCEL: 'YES_NO_CANCEL',
  } as const;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }
  createMenu(caption: string): Menu {
    return new Menu(this.#state, caption);
  }
  showSidebar(html: unknown): void {
    if (!(html instanceof HtmlOutput)) throw wrongSignature('Ui.showSidebar', [html]);
    this.#state.ui.showSidebar(HtmlOutput.shown(html));
  }
  showModalDialog(html: unknown, title: string): void {
    if (!(html instanceof HtmlOutput)) throw wrongSignature('Ui.showModalDialog', [html, title]);
    this.#state.ui.showDialog({ ...HtmlOutput.shown(html), title: String(title) }, true);
  }
  /** alert(text), alert(text, buttons) or alert(title, text, buttons). Locks do not survive it. */
  alert(...words: string[]): AlertAnswer {
    this.#state.lockHeld = false;
    const buttons = BUTTON_SETS.find((set) => words.length > 1 && set === words[words.length - 1]);
    if (words.length === 0 || (words.length > 1 && !buttons)) throw wrongSignature('Ui.alert', words);
    const [text = '', title = ''] = words.slice(0, buttons ? -1 : undefined).reverse();
    return this.#state.ui.alert(title, text, buttons ?? 'OK');
  }
}

guardService(Menu, 'Menu');
guardService(Ui, 'Ui', ['alert']);
