import { useEffect, useState } from 'preact/hooks';
import type { TabContent } from '../../../../shared/contract';
import { ask } from '../../server';
import { type Argument, typedReference } from './argument';
import { cutOut, parseReference } from './reference';
import * as words from './words';

interface Read {
  /** The arguments with the cells of typed references filled in. */
  readonly args: readonly Argument[];
  readonly waiting: boolean;
  readonly problem: string | undefined;
  /** Which argument the problem concerns. */
  readonly argument: number | undefined;
}

/** Typing "B5" passes "B", "B5" and "B51": the sheet is asked only when the typing pauses. */
const PAUSE_MILLISECONDS = 400;

type Loaded = ReadonlyMap<string, Argument | Error>;

/** Reads the cells of references that were typed, such as B5 or Paddocks!B2:B9. */
export function useReadReferences(args: readonly Argument[]): Read {
  const [loaded, setLoaded] = useState<Loaded>(new Map());
  const wanted = args.flatMap((argument) => typedReference(argument) ?? []);
  const missing = wanted.filter((reference) => !loaded.has(reference));
  const key = missing.join('\n');
  useEffect(() => {
    if (key === '') return undefined;
    let here = true;
    const timer = setTimeout(async () => {
      const read = await readAll(key.split('\n'));
      if (here) setLoaded((before) => new Map([...before, ...read]));
    }, PAUSE_MILLISECONDS);
    return () => {
      here = false;
      clearTimeout(timer);
    };
  }, [key]);
  const found = args.map((argument) => {
    const reference = typedReference(argument);
    return reference === undefined ? argument : (loaded.get(reference) ?? argument);
  });
  const at = found.findIndex((argument) => argument instanceof Error);
  return {
    args: found.map((argument, i) => (argument instanceof Error ? (args[i] as Argument) : argument)),
    waiting: missing.length > 0,
    problem: at < 0 ? undefined : (found[at] as Error).message,
    argument: at < 0 ? undefined : at,
  };
}

async function readAll(references: readonly string[]): Promise<[string, Argument | Error][]> {
  try {
    const { activeTab } = await ask('overview', {});
    const tabOf = (reference: string): string => parseReference(reference)?.tab ?? activeTab;
    const tabs = await ask('readTabs', { tabs: [...new Set(references.map(tabOf))] });
    return references.map((reference) => [reference, cut(reference, tabOf(reference), tabs)]);
  } catch (error) {
    return references.map((reference) => [reference, error as Error]);
  }
}

function cut(text: string, tabName: string, tabs: readonly TabContent[]): Argument | Error {
  const reference = parseReference(text);
  const tab = tabs.find(({ name }) => name === tabName);
  if (!reference || !tab) return new Error(words.noTab(tabName));
  const cells = cutOut(tab.values, reference);
  return { from: 'cells', reference: text, cells: cells.length > 0 && cells[0]?.length ? cells : [['']] };
}
