/** The hand-made script and page that stand for built files in the preview's own tests. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const FIXTURES = 'tests/preview/fixtures';
export const codeJs = readFileSync(join(FIXTURES, 'Code.js'), 'utf8');
export const sidebarHtml = readFileSync(join(FIXTURES, 'sidebar.html'), 'utf8');
