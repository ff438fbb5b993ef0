/** The person at the keyboard of a headless workbook: notes down what the script shows, and answers. */
import type { AlertAnswer, Menu, ShownHtml, UiPort } from '../service/host-state';

/** What the script showed to the person at the keyboard. */
export type Shown = {
  menus: Menu[];
  sidebars: ShownHtml[];
  dialogs: ShownHtml[];
  alerts: { title: string; text: string; buttons: string }[];
  toasts: { title: string; text: string }[];
};

export class NotingUi implements UiPort {
  readonly shown: Shown = { menus: [], sidebars: [], dialogs: [], alerts: [], toasts: [] };
  /** What the person answers to the next alerts. */
  answer: AlertAnswer = 'OK';

  addMenu(menu: Menu): void {
    this.shown.menus.push(menu);
  }
  showSidebar(html: ShownHtml): void {
    this.shown.sidebars.push(html);
  }
  showDialog(html: ShownHtml): void {
    this.shown.dialogs.push(html);
  }
  alert(title: string, text: string, buttons: string): AlertAnswer {
    this.shown.alerts.push({ title, text, buttons });
    return this.answer;
  }
  toast(text: string, title: string): void {
    this.shown.toasts.push({ title, text });
  }
}
