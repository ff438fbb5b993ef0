/** google.script for a page in the sidebar or a dialog. Put before everything else in the page's head. */
import { argumentsForScript } from '../script/page-boundary';
import { DOOR_KEY, type PageDoor } from './page-door';

type Handler = (value: unknown, userObject?: unknown) => void;
type Chain = { onSuccess?: Handler; onFailure?: Handler; userObject?: unknown };

const door = (window.parent as unknown as Record<string, PageDoor>)[DOOR_KEY]!;

/** The object that google.script.run is: handlers set on it make a new one. */
function runner(chain: Chain): Record<string, unknown> {
  const methods: Record<string, unknown> = {
    withSuccessHandler: (onSuccess: Handler) => runner({ ...chain, onSuccess }),
    withFailureHandler: (onFailure: Handler) => runner({ ...chain, onFailure }),
    withUserObject: (userObject: unknown) => runner({ ...chain, userObject }),
  };
  for (const name of door.functionNames()) methods[name] = (...values: unknown[]) => run(chain, name, values);
  return methods;
}

/** Illegal arguments throw at once; everything else happens later, as over a network. */
function run(chain: Chain, name: string, values: unknown[]): void {
  const json = JSON.stringify(argumentsForScript(values));
  setTimeout(() => {
    let result: unknown;
    try {
      result = JSON.parse(door.call(name, json));
    } catch (thrown) {
      fail(chain, thrown);
      return;
    }
    chain.onSuccess?.(result, chain.userObject);
  }, 0);
}

function fail(chain: Chain, thrown: unknown): void {
  const error = new Error((thrown as { message?: string } | null)?.message ?? String(thrown));
  error.name = 'ScriptError';
  if (chain.onFailure) chain.onFailure(error, chain.userObject);
  else console.error(`Uncaught ${error.name}: ${error.message}`);
}

(window as unknown as { google: unknown }).google = {
  script: {
    run: runner({}),
    host: {
      origin: window.location.origin,
      close: () => door.close(window),
      editor: { focus: () => door.focusGrid() },
      setHeight() {},
      setWidth() {},
    },
  },
};
