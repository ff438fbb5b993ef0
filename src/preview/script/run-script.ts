/**
 * Runs the built script as Apps Script would: one global scope with the language's own built-ins and the services,
 * and nothing of a browser or of Node. Works in both.
 */
import { readScript, type ScriptText } from './read-script';

export type ScriptServices = Readonly<Record<string, object>>;
export type ScriptFunctions = Readonly<Record<string, (...values: never[]) => unknown>>;

/** Names that exist here but not in Apps Script. The script sees them as undefined. */
const NOT_IN_APPS_SCRIPT = [
  'window',
  'self',
  'global',
  'document',
  'navigator',
  'location',
  'history',
  'parent',
  'top',
  'frames',
  'localStorage',
  'sessionStorage',
  'indexedDB',
  'process',
  'require',
  'module',
  'exports',
  'Buffer',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'clearTimeout',
  'clearInterval',
  'clearImmediate',
  'queueMicrotask',
  'requestAnimationFrame',
  'structuredClone',
  'fetch',
  'Request',
  'Response',
  'Headers',
  'XMLHttpRequest',
  'WebSocket',
  'EventSource',
  'Worker',
  'TextEncoder',
  'TextDecoder',
  'URL',
  'URLSearchParams',
  'FormData',
  'File',
  'Blob',
  'FileReader',
  'DOMException',
  'DOMParser',
  'Event',
  'EventTarget',
  'AbortController',
  'atob',
  'btoa',
  'crypto',
  'performance',
  'alert',
  'confirm',
  'prompt',
  'owl',
  'o_spreadsheet',
  'ExcelJS',
  '__dirname',
  '__filename',
];

const LANGUAGE = [
  'Object',
  'Function',
  'Array',
  'String',
  'Number',
  'Boolean',
  'Symbol',
  'BigInt',
  'Math',
  'JSON',
  'Date',
  'RegExp',
  'Error',
  'TypeError',
  'RangeError',
  'SyntaxError',
  'Map',
  'Set',
  'WeakMap',
  'WeakSet',
  'Promise',
  'Proxy',
  'Reflect',
  'Intl',
  'ArrayBuffer',
  'DataView',
  'Int8Array',
  'Uint8Array',
  'Uint8ClampedArray',
  'Int16Array',
  'Uint16Array',
  'Int32Array',
  'Uint32Array',
  'Float32Array',
  'Float64Array',
  'isNaN',
  'isFinite',
  'parseInt',
  'parseFloat',
  'encodeURIComponent',
  'decodeURIComponent',
  'encodeURI',
  'decodeURI',
] as const;

export class Script {
  readonly text: ScriptText;
  private readonly compiled: (...scope: unknown[]) => ScriptFunctions;
  private readonly scopeNames: string[];

  constructor(
    code: string,
    private readonly services: ScriptServices,
    private readonly now: () => Date,
  ) {
    this.text = readScript(code);
    this.scopeNames = [
      ...new Set(['globalThis', 'Date', 'console', ...Object.keys(services), ...NOT_IN_APPS_SCRIPT]),
    ];
    const exported = this.text.functionNames.map((name) => `${JSON.stringify(name)}: ${name}`).join(', ');
    this.compiled = new Function(...this.scopeNames, `${code}\n;return { ${exported} };`) as never;
  }

  /** Evaluates the whole script anew and gives its functions: nothing lives on between two calls. */
  load(): ScriptFunctions {
    const language = Object.fromEntries(
      LANGUAGE.map((name) => [name, (globalThis as Record<string, unknown>)[name]]),
    );
    const scope: Record<string, unknown> = {
      ...this.services,
      Date: dateWithClock(this.now),
      console: QUIET_CONSOLE,
    };
    scope.globalThis = { ...language, ...scope };
    return this.compiled.apply(
      scope.globalThis,
      this.scopeNames.map((name) => scope[name]),
    );
  }
}

/** Apps Script logs to the cloud; here it goes nowhere. */
const QUIET_CONSOLE = { log() {}, info() {}, warn() {}, error() {}, debug() {}, time() {}, timeEnd() {} };

/** Date with the host's clock behind `new Date()` and `Date.now()`. */
function dateWithClock(now: () => Date): DateConstructor {
  return new Proxy(Date, {
    construct: (target, values) =>
      values.length === 0 ? new target(now().getTime()) : Reflect.construct(target, values),
    apply: () => now().toString(),
    get: (target, key) => (key === 'now' ? () => now().getTime() : Reflect.get(target, key)),
  });
}
