/** Generated text that is committed or pushed must be what the catalogue and the samples say now. */
import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../shared/catalogue/index';
import { dayFromIso } from '../../shared/core/calendar/day';
import { SAMPLE_FARMS } from '../../shared/samples/index';
import { DAY_OF_FILES, type SampleCell } from '../../shared/samples/sample-farm';
import { withFunctionList } from '../../src/generate/readme-functions';
import { sourcesList } from '../../src/generate/sources-list';

describe('generated text', () => {
  it('README list of functions is fresh', () => {
    const readme = readFileSync('README.md', 'utf8');
    expect(withFunctionList(readme, CATALOGUE)).toBe(readme);
  });

  it('the list of sources is fresh', () => {
    expect(sourcesList(CATALOGUE)).toBe(readFileSync('shared/SOURCES.md', 'utf8'));
  });

  it('the sidebar loads nothing from outside and keeps its script closed', () => {
    const page = readFileSync('dist/sidebar.html', 'utf8');
    for (const text of [page, unpacked(page)]) {
      expect(text).not.toMatch(/\b(src|href)\s*=\s*["']?(https?:)?\/\//i);
      expect(text).not.toMatch(/url\(\s*["']?(https?:)?\/\//i);
      expect(text).not.toMatch(/@import/);
    }
    expect(page.match(/<\/script>/g)).toHaveLength(1);
    expect(Buffer.byteLength(page)).toBeLessThanOrEqual(400 * 1024);
    expect(Math.max(...page.split('\n').map((line) => line.length))).toBeLessThanOrEqual(1000);
  });

  it('what the sidebar packs holds nothing that Google’s page service takes for a comment, and reads nothing that Safari knows since 2023 only', () => {
    const page = readFileSync('dist/sidebar.html', 'utf8');
    expect(packed(page)).toMatch(/^[\w-]{100000,}$/);
    expect(unpacked(page)).not.toMatch(/\(\?<[=!]/);
  });

  it('asks for the two scopes only', () => {
    const manifest = JSON.parse(readFileSync('dist/appsscript.json', 'utf8')) as {
      oauthScopes: string[];
      runtimeVersion: string;
    };
    expect(manifest.runtimeVersion).toBe('V8');
    expect(manifest.oauthScopes).toEqual([
      'https://www.googleapis.com/auth/spreadsheets.currentonly',
      'https://www.googleapis.com/auth/script.container.ui',
    ]);
  });
});

describe.each(SAMPLE_FARMS)('sample-sheets/$id.xlsx', (farm) => {
  it('holds the same cells as the sample farm of the menu', async () => {
    const tabs = farm.tabs(DAY_OF_FILES);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(`sample-sheets/${farm.id}.xlsx`);
    expect(book.worksheets.map((sheet) => sheet.name)).toEqual(tabs.map((tab) => tab.name));
    for (const tab of tabs) {
      const sheet = book.getWorksheet(tab.name);
      tab.rows.forEach((row, r) => {
        row.forEach((cell, c) => {
          expect(fileCell(sheet?.getCell(r + 1, c + 1).value), `${tab.name} ${r + 1},${c + 1}`).toEqual(cell);
        });
      });
    }
  });
});

/** The letters of the page's packed script. */
function packed(page: string): string {
  const list = /^const PACKED = \[\n([^\]]*)\n\];$/m.exec(page)?.[1] ?? '';
  return list.replace(/['",\s]/g, '');
}

function unpacked(page: string): string {
  return inflateSync(Buffer.from(packed(page), 'base64url')).toString('utf8');
}

function fileCell(value: ExcelJS.CellValue | undefined): SampleCell {
  if (value === null || value === undefined) return '';
  if (value instanceof Date) return { day: dayFromIso(value.toISOString().slice(0, 10)) ?? 0 };
  if (typeof value === 'object' && 'formula' in value) return { f: `=${value.formula}` };
  return value as string | number;
}
