/** Shows the script's pages: the sidebar, dialogs, plain messages. */
import type { AlertAnswer, AlertButtons, ShownHtml } from '../service/host-state';
import { listenForNextPart } from './next-part';
import { element } from './page-globals';

/** What Google's own frame allows a script's page. */
const SANDBOX =
  'allow-same-origin allow-scripts allow-forms allow-popups allow-popups-to-escape-sandbox allow-downloads allow-modals';
const TOAST_SECONDS = 5;

/** The page as it is, with google.script put in front. */
function frameOf(html: ShownHtml): HTMLIFrameElement {
  const frame = document.createElement('iframe');
  frame.className = 'page-frame';
  frame.title = html.title;
  frame.setAttribute('sandbox', SANDBOX);
  const shim = '<script src="/run-shim.js"></script>';
  const head = /<head[^>]*>/i;
  frame.srcdoc = head.test(html.content)
    ? html.content.replace(head, (tag) => `${tag}${shim}`)
    : `${shim}${html.content}`;
  return frame;
}

/** The grid measures itself again only when the window says its size changed. */
export function measureGrid(): void {
  window.dispatchEvent(new Event('resize'));
}

export function showSidebar(html: ShownHtml): void {
  const sidebar = element('sidebar');
  sidebar.querySelector('iframe')?.remove();
  element('sidebar-title').textContent = html.title;
  const frame = frameOf(html);
  frame.addEventListener(
    'load',
    () => {
      if (!frame.contentWindow) return;
      listenForNextPart(frame.contentWindow);
      frame.contentWindow.focus();
    },
    { once: true },
  );
  sidebar.append(frame);
  sidebar.hidden = false;
  measureGrid();
}

export function closeSidebar(): void {
  const sidebar = element('sidebar');
  sidebar.querySelector('iframe')?.remove();
  sidebar.hidden = true;
  measureGrid();
}

export function showDialog(html: ShownHtml, isModal: boolean): void {
  const dialog = element<HTMLDialogElement>('script-dialog');
  closeDialog();
  element('script-dialog-title').textContent = html.title;
  const frame = frameOf(html);
  frame.style.width = `${html.width ?? 400}px`;
  frame.style.height = `${html.height ?? 300}px`;
  dialog.append(frame);
  if (isModal) dialog.showModal();
  else dialog.show();
}

export function closeDialog(): void {
  const dialog = element<HTMLDialogElement>('script-dialog');
  dialog.querySelector('iframe')?.remove();
  dialog.close();
}

/** Closes the page that a frame's window belongs to. */
export function closePageOf(frameWindow: Window): void {
  const inSidebar = element('sidebar').querySelector('iframe')?.contentWindow === frameWindow;
  if (inSidebar) closeSidebar();
  else closeDialog();
}

/** A message with an OK button. Unlike in Sheets the script does not wait for it. */
export function showNotice(title: string, text: string): void {
  element('notice-title').textContent = title;
  element('notice-title').hidden = title === '';
  element('notice-text').textContent = text;
  const notice = element<HTMLDialogElement>('notice');
  if (!notice.open) notice.showModal();
}

export function askPerson(title: string, text: string, buttons: AlertButtons): AlertAnswer {
  if (buttons === 'OK') {
    showNotice(title, text);
    return 'OK';
  }
  const isYes = window.confirm([title, text].filter(Boolean).join('\n\n'));
  if (buttons === 'OK_CANCEL') return isYes ? 'OK' : 'CANCEL';
  return isYes ? 'YES' : 'NO';
}

let toastTimer: number | undefined;

export function showToast(text: string, title: string): void {
  const toast = element('toast');
  toast.textContent = [title, text].filter(Boolean).join(': ');
  toast.hidden = false;
  window.clearTimeout(toastTimer);
  toastTimer = window.setTimeout(() => {
    toast.hidden = true;
  }, TOAST_SECONDS * 1000);
}
