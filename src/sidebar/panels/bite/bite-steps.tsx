import { useState } from 'preact/hooks';
import { startUnits } from '../../../../shared/lists/start-units';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import {
  BITE_BLOCK,
  BITE_CAUTIONS,
  type BitePlan,
  biteBlock,
} from '../../../../shared/tasks/bite/bite-block';
import { BITE_SETTINGS, type BiteSettings } from '../../../../shared/tasks/bite/bite-settings';
import { readBite } from '../../../../shared/tasks/bite/read-bite';
import { readLines, startLines, type TypedLine } from '../../../../shared/tasks/bite/typed-line';
import { WIRES } from '../../../../shared/tasks/bite/wires';
import { readUnits } from '../../../../shared/tasks/settings';
import { standingBlock } from '../../../../shared/tasks/standing-block';
import type { UnitSystem } from '../../../../shared/units/units';
import { Cautions } from '../../parts/cautions';
import { Notice } from '../../parts/notice';
import { SettingsFields } from '../../parts/settings-fields';
import { useSettings } from '../../parts/settings-state';
import { UnitsChoice } from '../../parts/units-choice';
import type { Book } from '../../parts/use-book';
import { useReset } from '../../parts/use-reset';
import { WriteBlock } from '../../parts/write-block';
import { BiteResult } from './bite-result';
import { LevelsTable } from './levels-table';
import { LinesSection } from './lines-section';

export function BiteSteps({ book, onReread }: { book: Book; onReread: () => void }) {
  const old = standingBlock(book, BITE_BLOCK);
  const standingUnits = old && readUnits(old);
  const [chosenUnits, setUnits] = useState<UnitSystem>(() => startUnits(book));
  const units = standingUnits ?? chosenUnits;
  const on = { units, comma: decimalComma(book.overview.locale) };
  const standing = old && readBite(old, units);
  const settings = useSettings(BITE_SETTINGS, standing?.settings.values ?? {}, on);
  const [typed, setLines] = useState<readonly TypedLine[]>();
  useReset(standing?.lines, () => setLines(undefined));
  const wires = standing && standing.wires.length > 0 ? standing.wires : WIRES;
  const lines = typed ?? startLines(standing?.lines, on);
  const read = readLines(lines, wires, on);
  const problems = [...(standing?.problems ?? []), ...(standing?.settings.problems ?? [])];
  const ok =
    settings.read.ok && read.problems.every((problem) => problem === undefined) && problems.length === 0;
  const plan: BitePlan | undefined = ok
    ? { lines: read.lines, wires, units, settings: settings.read.values as BiteSettings }
    : undefined;
  return (
    <>
      {!standingUnits && <UnitsChoice units={units} onChange={setUnits} />}
      <h2>1. The lines</h2>
      <LinesSection lines={lines} problems={read.problems} wires={wires} units={units} onChange={setLines} />
      <h2>2. Energizer and levels</h2>
      <SettingsFields specs={BITE_SETTINGS} {...settings} {...on} onChange={settings.setTyped} />
      <details>
        <summary>Levels that are named, and how sure they are</summary>
        <LevelsTable />
      </details>
      {problems.map((problem) => (
        <Notice key={problem} kind="problem">
          {problem}
        </Notice>
      ))}
      <h2>3. Volts at the far end</h2>
      {plan ? <BiteResult plan={plan} /> : <p class="hint">Fill in what is missing above.</p>}
      <Cautions sentences={BITE_CAUTIONS} />
      <h2>4. Into the sheet</h2>
      <WriteBlock
        name={BITE_BLOCK}
        what="the volts"
        tabName="Fence volts"
        book={book}
        notYet={plan ? undefined : 'Something above is still missing or wrong.'}
        compose={(corner) => {
          if (!plan) throw new Error('Something is still missing above. Nothing was written.');
          return biteBlock(plan, corner);
        }}
        onDone={onReread}
      />
    </>
  );
}
