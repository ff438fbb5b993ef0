import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockFingerprint } from '../../shared/table/block-fingerprint';

describe('blockFingerprint', () => {
  it('is the FNV-1a hash of the text', () => {
    // FNV-1a 32 of '[[["foobar"]]]' has no published vector, so the hash is worked here in plain BigInt steps.
    let hash = 0x811c9dc5n;
    for (const unit of '[[["foobar"]]]')
      hash = ((hash ^ BigInt(unit.charCodeAt(0))) * 0x01000193n) % 2n ** 32n;
    expect(blockFingerprint([['foobar']], [['']]).slice(0, 8)).toBe(hash.toString(16).padStart(8, '0'));
  });

  it('tells number, text, date, TRUE and blank apart', () => {
    const cells = [1, '1', { d: '2026-04-01' }, '2026-04-01', true, 'TRUE', '', 0];
    expect(new Set(cells.map((cell) => blockFingerprint([[cell]], [['']]))).size).toBe(cells.length);
  });

  it('does not change when only the value of a formula changes', () => {
    expect(blockFingerprint([[1, 2]], [['=A1', '']])).toBe(
      blockFingerprint([['Loading...', 2]], [['=A1', '']]),
    );
  });

  it('what still calculates counts as blank, wherever it stands', () => {
    expect(blockFingerprint([['Loading...', 2]], [['', '']])).toBe(blockFingerprint([['', 2]], [['', '']]));
  });

  it('changes when a typed cell, a formula or the shape changes', () => {
    const row = fc.array(fc.oneof(fc.integer(), fc.string(), fc.boolean()), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(row, row, (a, b) => {
        fc.pre(JSON.stringify(a) !== JSON.stringify(b));
        const blanks = (cells: unknown[]): string[] => cells.map(() => '');
        expect(blockFingerprint([a], [blanks(a)])).not.toBe(blockFingerprint([b], [blanks(b)]));
      }),
    );
    expect(blockFingerprint([[1]], [['=A1']])).not.toBe(blockFingerprint([[1]], [['=A2']]));
    expect(blockFingerprint([[1, 2]], [['', '']])).not.toBe(blockFingerprint([[1], [2]], [[''], ['']]));
  });
});
