import { existsSync } from 'node:fs';
import { relative } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import longest from './tests/longest.json' with { type: 'json' };

/** The files that take longest begin first, so that none of them is left to one worker at the end. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const gone = longest.filter((name) => !existsSync(name));
    if (gone.length > 0) throw new Error(`tests/longest.json names files that are not there: ${gone}`);
    const place = ({ moduleId }: TestSpecification): number =>
      longest.indexOf(relative('.', moduleId)) + 1 || longest.length + 1;
    return [...files].sort((one, other) => place(one) - place(other));
  }
}

export default defineConfig({
  test: {
    setupFiles: ['tests/setup.ts'],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    // Most of what a workbook in memory makes is garbage at once: with more room for it less is copied.
    execArgv: ['--max-semi-space-size=32', '--no-flush-bytecode'],
    projects: [
      { extends: true, test: { name: 'long', include: longest } },
      // Loading the sources and the engine anew takes many of the others longer than their tests.
      {
        extends: true,
        test: { name: 'short', include: ['tests/**/*.test.ts'], exclude: longest, isolate: false },
      },
    ],
  },
});
