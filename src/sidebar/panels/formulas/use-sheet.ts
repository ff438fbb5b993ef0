import { useEffect, useState } from 'preact/hooks';
import { decimalComma } from '../../../../shared/locale/decimal-comma';
import { farmUnits } from '../../../../shared/tasks/rotation/farm-units';
import type { UnitSystem } from '../../../../shared/units/units';
import { readBook } from '../../parts/use-book';

/** What the form must know of the spreadsheet. */
export interface SheetFacts {
  readonly comma: boolean;
  readonly units: UnitSystem;
  /** Why the facts are only assumed, where the script did not answer. */
  readonly problem: string | undefined;
}

/** Fractions are right in every locale, so a decimal comma is assumed until the locale is known. */
const UNKNOWN: SheetFacts = { comma: true, units: 'US', problem: undefined };

export function useSheet(): SheetFacts {
  const [facts, setFacts] = useState(UNKNOWN);
  useEffect(() => {
    let here = true;
    readBook().then(
      (book) => {
        if (!here) return;
        const { locale } = book.overview;
        setFacts({ comma: decimalComma(locale), units: farmUnits(book), problem: undefined });
      },
      (failure: Error) => here && setFacts({ ...UNKNOWN, problem: failure.message }),
    );
    return () => {
      here = false;
    };
  }, []);
  return facts;
}
