import type { OwnGroundLimit } from '../../../../shared/table/own-ground-limit';
import { fromInside, symbolOf, type UnitSystem } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { Button } from '../../parts/button';
import { count } from '../../parts/day-words';
import { Notice } from '../../parts/notice';
import * as words from './words';

interface Props {
  readonly own: OwnGroundLimit;
  readonly units: UnitSystem;
  /** In the grower's unit, rounded. */
  readonly onUse: (limit: number) => void;
}

/** Offers the limit that the farm's own cover records give; the grower decides. */
export function OwnLimitOffer({ own, units, onUse }: Props) {
  if (own.records === 0) return null;
  const inUnits = (limit: number): number => Number(fromInside(limit, 'loadPerArea', units).toPrecision(3));
  const said = (limit: number): string => `${formatNumber(inUnits(limit))} ${symbolOf('loadPerArea', units)}`;
  const stays = count(own.records, 'stay');
  if (own.limit === undefined) {
    return <p class="hint">{words.tooFewRecords(stays)}</p>;
  }
  const { limit, spread } = own;
  return (
    <Notice kind="note">
      <p>
        {words.ownLimit(stays)}
        <strong>{said(limit)}</strong> for 75 % of the ground still covered.{' '}
        {spread ? words.leftOut(said(spread[0]), said(spread[1])) : words.UNSURE}
      </p>
      <Button onPress={() => onUse(inUnits(limit))}>Use this limit</Button>
    </Notice>
  );
}
