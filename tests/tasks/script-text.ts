/** The script as it would be built, from the sources of this moment: for tests that write through it. */
import { build } from 'esbuild';
import { SCRIPT_BUNDLE } from '../../src/generate/script-bundle';

let made: Promise<string> | undefined;

export function scriptText(): Promise<string> {
  made ??= build(SCRIPT_BUNDLE).then((result) => result.outputFiles[0]?.text ?? '');
  return made;
}
