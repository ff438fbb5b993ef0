/** HtmlService: pages for the sidebar and dialogs. Files are served as they are; templates are not supported. */
import { type CallGate, GATE, guardService } from './call-gate';
import type { HostState, ShownHtml } from './host-state';

export class HtmlOutput {
  readonly [GATE]: CallGate;
  #shown: ShownHtml;

  constructor(gate: CallGate, content: string) {
    this[GATE] = gate;
    this.#shown = { title: '', content };
  }
  static shown(output: HtmlOutput): ShownHtml {
    return { ...output.#shown };
  }
  append(content: string): this {
    this.#shown.content += String(content);
    return this;
  }
  setTitle(title: string): this {
    this.#shown.title = String(title);
    return this;
  }
  setWidth(width: number): this {
    this.#shown.width = width;
    return this;
  }
  setHeight(height: number): this {
    this.#shown.height = height;
    return this;
  }
}

export class HtmlService {
  readonly [GATE]: CallGate;
  readonly #state: HostState;

  constructor(state: HostState) {
    this[GATE] = state.gate;
    this.#state = state;
  }
  createHtmlOutput(content = ''): HtmlOutput {
    return new HtmlOutput(this[GATE], String(content));
  }
  createHtmlOutputFromFile(name: string): HtmlOutput {
    const content = this.#state.htmlFiles[name.replace(/\.html$/, '')];
    if (content === undefined) throw new Error(`No HTML file named ${name} was found.`);
    return new HtmlOutput(this[GATE], content);
  }
}

// Making a page changes nothing, so cell functions may do it: none of these is a write.
guardService(HtmlOutput, 'HtmlOutput');
guardService(HtmlService, 'HtmlService');
