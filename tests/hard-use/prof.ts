import { openWorkbook } from '../../src/headless';
import { scriptText } from '../tasks/script-text';
import { buildEveryBlock } from './every-block';
import { readBook } from './rotation-task';
import { composed } from './typed-cells';
import { FARM_RULES, farmToType } from './typed-farm';
import { withTyped } from './typed-spills';
import { typedTasks } from './typed-tasks';

async function main() {
  const t0 = process.cpuUsage();
  const workbook = await openWorkbook({
    tabs: farmToType('US'),
    codeJs: await scriptText(),
    locale: 'en_US',
    today: '2026-04-01',
  });
  await buildEveryBlock(workbook, 'US', { rules: FARM_RULES });
  const { write } = await import('./every-block');
  const { markTask } = await import('../../shared/tasks/share/mark-task');
  await write(workbook, markTask('4f2a'), {});
  const book = readBook(workbook);
  const tasks = await typedTasks(book, 'US');
  console.log('built', process.cpuUsage(t0).user / 1000);
  const { Session } = await import('node:inspector/promises');
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.start');
  for (const task of tasks) {
    const base = await composed(task, task.content);
    const t = process.cpuUsage();
    let n = 0;
    for (let r = 0; r < Math.min(60, task.content.values.length); r++) {
      const changed = withTyped(task.content, base.cells, [
        { row: r, column: 1, value: 'mark', formula: '' },
      ]);
      await task.rebuild(changed);
      n++;
    }
    console.log(task.name, n, (process.cpuUsage(t).user / 1000 / n).toFixed(2), 'ms each');
  }
  const { profile } = await session.post('Profiler.stop');
  (await import('node:fs')).writeFileSync('/tmp/rt/loop.cpuprofile', JSON.stringify(profile));
}
main();
