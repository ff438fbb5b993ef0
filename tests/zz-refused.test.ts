import { it, vi } from 'vitest';
import { openWorkbook } from '../src/preview/headless';
import { buildRotation, readBook } from './hard-use/rotation-task';
import { tryEveryCell, composed } from './hard-use/typed-cells';
import { FARM_RULES, farmToType, typeMoves } from './hard-use/typed-farm';
import { rotationTask } from './hard-use/typed-rotation';
import { scriptText } from './tasks/script-text';
vi.mock('../shared/block/formula-shape', async (original) => {
  const { formulaShape } = await original<any>();
  const known = new Map<string, string>();
  return { formulaShape: (f: string) => { const s = known.get(f) ?? formulaShape(f); known.set(f, s); return s; } };
});
it('x', async () => {
  const w = await openWorkbook({ tabs: farmToType('US'), codeJs: await scriptText(), locale: 'en_US', today: '2026-04-01' });
  buildRotation(w, { units: 'US', rules: FARM_RULES });
  const rotation = rotationTask('Rotation', readBook(w));
  typeMoves(w, readBook(w));
  const three = rotationTask('Rotation, three moves done', readBook(w), composed(rotation, rotation.content));
  for (const task of [rotation, three]) {
    const all = tryEveryCell(task);
    const c = (v: string) => all.filter((x) => x.verdict === v).length;
    console.log(task.name, all.length, 'kept', c('kept'), 'refused', c('refused'), 'lost', c('lost'));
    for (const v of ['refused', 'lost']) {
      const by = new Map<string, number>();
      for (const x of all.filter((x) => x.verdict === v)) { const k = x.what.replace(/^[a-z ]+ over /, '') + (v === 'lost' ? ' | ' + x.what.split(' over ')[0] : ''); by.set(k, (by.get(k) ?? 0) + 1); }
      console.log(v, [...by].map(([k, n]) => `${n} ${k}`).join('\n  '));
    }
  }
}, 300000);
