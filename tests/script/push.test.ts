/** What clasp would push: its own file listing, offline, on the built folder. */
import { execFileSync } from 'node:child_process';
import { copyFileSync, cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

describe('clasp show-file-status', () => {
  it('pushes the script, the page and the manifest, nothing else', () => {
    const folder = mkdtempSync(join(tmpdir(), 'sounder-push-'));
    try {
      cpSync('dist', join(folder, 'dist'), { recursive: true });
      writeFileSync(join(folder, 'dist/stray.js'), '// must not be pushed\n');
      copyFileSync('.claspignore', join(folder, '.claspignore'));
      writeFileSync(join(folder, '.clasp.json'), JSON.stringify({ scriptId: 'example', rootDir: 'dist' }));
      const clasp = resolve('node_modules/.bin/clasp');
      const out = execFileSync(clasp, ['show-file-status', '--json'], { cwd: folder, encoding: 'utf8' });
      const { filesToPush } = JSON.parse(out) as { filesToPush: string[] };
      expect(filesToPush.sort()).toEqual(['dist/Code.js', 'dist/appsscript.json', 'dist/sidebar.html']);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
