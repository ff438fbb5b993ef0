/** LibreOffice as a second opinion: opens an .xlsx, works every formula out anew, saves it, and we read what it got. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ExcelJS from 'exceljs';

/** Where LibreOffice stands; undefined where there is none. */
export function findOffice(): string | undefined {
  for (const name of [process.env.SOUNDER_SOFFICE, 'soffice', 'libreoffice']) {
    if (!name) continue;
    try {
      execFileSync(name, ['--version'], { stdio: 'pipe' });
      return name;
    } catch {
      // Not this one.
    }
  }
  return undefined;
}

/** 0: always. The default keeps what the file says a formula gave, which would prove nothing. */
const ALWAYS_RECALCULATE = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** Functions newer than the file format, which want a prefix there. */
const NEWER = /(?<![\w.])(MAXIFS|MINIFS|IFS|SWITCH|CONCAT|TEXTJOIN|XLOOKUP|SORT|UNIQUE|FILTER|SEQUENCE)\(/g;

export function newerPrefixed(formula: string): string {
  return formula.replace(NEWER, '_xlfn.$1(');
}

export async function recalculate(office: string, file: ExcelJS.Workbook): Promise<ExcelJS.Workbook> {
  const folder = mkdtempSync(join(tmpdir(), 'sounder-office-'));
  try {
    const profile = join(folder, 'profile');
    mkdirSync(join(profile, 'user'), { recursive: true });
    writeFileSync(join(profile, 'user', 'registrymodifications.xcu'), ALWAYS_RECALCULATE);
    writeFileSync(join(folder, 'book.xlsx'), new Uint8Array(await file.xlsx.writeBuffer()));
    const out = join(folder, 'out');
    execFileSync(
      office,
      [
        `-env:UserInstallation=file://${profile}`,
        '--headless',
        '--convert-to',
        'xlsx:Calc MS Excel 2007 XML',
        '--outdir',
        out,
        join(folder, 'book.xlsx'),
      ],
      { stdio: 'pipe', timeout: 300_000 },
    );
    const result = new ExcelJS.Workbook();
    await result.xlsx.load(readFileSync(join(out, 'book.xlsx')) as unknown as ArrayBuffer);
    return result;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
