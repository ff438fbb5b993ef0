import { useState } from 'preact/hooks';
import { BLANK, formula } from '../../../../shared/block/cells';
import type { AnyEntry } from '../../../../shared/catalogue/define';
import type { BlockCell } from '../../../../shared/contract';
import { usePage } from '../../page';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';
import { ask } from '../../server';
import { type Argument, typedReference } from './argument';
import { formulaText } from './formula-text';
import * as words from './words';

interface Props {
  readonly entry: AnyEntry;
  readonly args: readonly Argument[];
  readonly comma: boolean;
  readonly ready: boolean;
}

type Progress =
  | { readonly at: 'idle' | 'working' }
  | { readonly at: 'done'; readonly where: string }
  | { readonly at: 'failed'; readonly sentence: string };

/** Shows the formula and puts it into the active cell. Only a formula that this form put there is replaced. */
export function PutFormula({ entry, args, comma, ready }: Props) {
  const [progress, setProgress] = useState<Progress>({ at: 'idle' });
  const [own, setOwn] = useState<{ readonly where: string; readonly cell: BlockCell }>();
  const { say } = usePage();
  const typedList = entry.params.find(
    ({ kind }, i) => (kind === 'list' || kind === 'corners') && isTypedValue(args[i]),
  );
  const put = async (): Promise<void> => {
    setProgress({ at: 'working' });
    say('Working…');
    try {
      const { where, holds, place } = await activePlace();
      const before = where === own?.where && holds !== undefined ? own.cell : BLANK;
      if (holds !== undefined && before === BLANK) {
        throw new Error(words.cellTaken(where, holds));
      }
      const cell = formula(formulaText(entry.name, args, { separator: ';', comma }));
      await ask('changeCells', { cells: [{ ...place, before, after: cell }] });
      setOwn({ where, cell });
      setProgress({ at: 'done', where });
      say(words.formulaIn(where));
    } catch (error) {
      setProgress({ at: 'failed', sentence: (error as Error).message });
      say('');
    }
  };
  const off = !ready || progress.at === 'working' || typedList !== undefined;
  return (
    <section aria-label="Into the sheet">
      {ready && (
        <p>
          <code class="wrap">{formulaText(entry.name, args, { separator: comma ? ';' : ',', comma })}</code>
        </p>
      )}
      {ready && typedList && <Notice kind="note">{words.cellsFirst(typedList.name)}</Notice>}
      <Button kind="main" disabled={off} onPress={() => put()}>
        {progress.at === 'working' ? 'Working…' : 'Put into the active cell'}
      </Button>
      {progress.at === 'done' && <Notice kind="done">{words.formulaIn(progress.where)}</Notice>}
      {progress.at === 'failed' && <Notice kind="problem">{progress.sentence}</Notice>}
    </section>
  );
}

function isTypedValue(argument: Argument | undefined): boolean {
  return argument?.from === 'typed' && argument.text.trim() !== '' && typedReference(argument) === undefined;
}

const LONGEST_QUOTE = 30;

/** Where the formula would go, and what stands there already. */
async function activePlace() {
  const { tab, a1, row, column, values } = await ask('readSelection', {});
  const place = { tab, row, column };
  const where = `${a1.slice(a1.lastIndexOf('!') + 1)} on “${tab}”`;
  const cell = values.flat().find((value) => value !== '');
  if (cell === undefined) return { where, place, holds: undefined };
  const text = typeof cell === 'object' ? cell.d : String(cell);
  return { where, place, holds: text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text };
}
