/** "Work out a number": find a cell function, then fill its form. */
import { useState } from 'preact/hooks';
import type { AnyEntry } from '../../../../shared/catalogue/define';
import { FormulaForm } from './formula-form';
import { FunctionList } from './function-list';
import { useSheet } from './use-sheet';

export function FormulasPanel() {
  const [entry, setEntry] = useState<AnyEntry>();
  const [search, setSearch] = useState('');
  const sheet = useSheet();
  if (!entry) return <FunctionList search={search} onSearch={setSearch} onChoose={setEntry} />;
  return <FormulaForm key={entry.name} entry={entry} sheet={sheet} onBack={() => setEntry(undefined)} />;
}
