/** The built script as Google Sheets will load it: nothing but the language around it. */
import { readFileSync, statSync } from 'node:fs';
import vm from 'node:vm';
import { describe, expect, it } from 'vitest';
import { CATALOGUE } from '../../shared/catalogue/index';
import { SCRIPT_FUNCTIONS } from '../../src/generate/stubs';

const CODE = readFileSync('dist/Code.js', 'utf8');
const KILOBYTE = 1024;

function load(): vm.Context {
  const context = vm.createContext({});
  vm.runInContext(CODE, context);
  return context;
}

describe('dist/Code.js', () => {
  it('stays under 110 KB', () => {
    expect(statSync('dist/Code.js').size).toBeLessThanOrEqual(110 * KILOBYTE);
  });

  it('loads with nothing but the language and leaves only its own names', () => {
    const names = Object.keys(load()).sort();
    const wanted = [
      ...CATALOGUE.map((entry) => entry.name),
      ...SCRIPT_FUNCTIONS.map(({ name }) => name),
      'Lib_',
    ];
    expect(names).toEqual(wanted.sort());
  });

  it('repeats the argument names of every cell function, with help for each', () => {
    for (const entry of CATALOGUE) {
      const names = entry.params.map((param) => param.name);
      const stub = new RegExp(
        `/\\*\\*((?:(?!\\*/)[\\s\\S])*)\\*/\\nfunction ${entry.name}\\(([^)]*)\\)`,
      ).exec(CODE);
      expect(stub?.[2]?.split(', ').filter(Boolean), entry.name).toEqual(names);
      expect(stub?.[1], entry.name).toContain('@customfunction');
      for (const name of names)
        expect(stub?.[1], entry.name).toMatch(new RegExp(`@param \\{[^}]+\\} ${name} \\S`));
    }
  });

  it('answers every example of the catalogue through its stub', () => {
    const context = load();
    for (const entry of CATALOGUE) {
      for (const example of entry.examples) {
        const stub = context[entry.name] as (...args: unknown[]) => unknown;
        expectClose(stub(...example.args), example.gives, example.tolerance, entry.name);
      }
    }
  });

  it('reaches no other service than those of the sheet', () => {
    expect(CODE).not.toMatch(
      /UrlFetchApp|DriveApp|GmailApp|MailApp|PropertiesService|CacheService|openBy(Id|Url)|XMLHttpRequest|fetch\(/,
    );
  });

  it('has no private or static class fields, which Apps Script cannot parse', () => {
    expect(CODE).not.toMatch(/\bstatic\s+[A-Za-z_$][\w$]*\s*=/);
    expect(CODE).not.toMatch(/\bthis\.#/);
  });
});

const EXACT = 1e-9;

function expectClose(got: unknown, wanted: unknown, tolerance: number | undefined, name: string): void {
  if (Array.isArray(wanted)) {
    expect(Array.isArray(got) && got.length, name).toBe(wanted.length);
    wanted.forEach((item, i) => {
      expectClose((got as unknown[])[i], item, tolerance, name);
    });
  } else if (typeof wanted === 'number') {
    const allowed = tolerance ?? EXACT * Math.max(1, Math.abs(wanted));
    expect(Math.abs((got as number) - wanted), `${name} gave ${got}, wanted ${wanted}`).toBeLessThanOrEqual(
      allowed,
    );
  } else {
    expect(got, name).toBe(wanted);
  }
}
