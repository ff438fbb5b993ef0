/** SpreadsheetApp.newRichTextValue: text that is never read as a formula or number. Styles are not shown. */
import { type CallGate, GATE, guardService } from './call-gate';

export class RichTextValue {
  readonly [GATE]: CallGate;
  readonly #text: string;

  constructor(gate: CallGate, text: string) {
    this[GATE] = gate;
    this.#text = text;
  }
  getText(): string {
    return this.#text;
  }
}

export class RichTextValueBuilder {
  readonly [GATE]: CallGate;
  #text = '';

  constructor(gate: CallGate) {
    this[GATE] = gate;
  }
  setText(text: string): this {
    this.#text = String(text);
    return this;
  }
  build(): RichTextValue {
    return new RichTextValue(this[GATE], this.#text);
  }
}

guardService(RichTextValue, 'RichTextValue');
guardService(RichTextValueBuilder, 'RichTextValueBuilder');

export function isRichTextValue(value: unknown): value is RichTextValue {
  return value instanceof RichTextValue;
}
