/** "Work out a number": find a cell function, then fill its form. */
import { useState } from 'preact/hooks';
import type { AnyEntry } from '../../../../shared/catalogue/define';
import type { UnitSystem } from '../../../../shared/units/units';
import { FormulaForm } from './formula-form';
import { FunctionList } from './function-list';
import { useSheet } from './use-sheet';

export function FormulasPanel() {
  const [entry, setEntry] = useState<AnyEntry>();
  const [search, setSearch] = useState('');
  // Chosen once, they hold for the next function too.
  const [units, setUnits] = useState<UnitSystem>();
  const sheet = useSheet();
  if (!entry) return <FunctionList search={search} onSearch={setSearch} onChoose={setEntry} />;
  return (
    <FormulaForm
      key={entry.name}
      entry={entry}
      sheet={sheet}
      units={units ?? sheet.units}
      onUnits={setUnits}
      onBack={() => setEntry(undefined)}
    />
  );
}
