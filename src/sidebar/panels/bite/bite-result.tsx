import type { BitePlan } from '../../../../shared/tasks/bite/bite-block';
import { weedsOhmMeters } from '../../../../shared/tasks/bite/bite-settings';
import { ENOUGH_SO_FAR, illustratedLabels } from '../../../../shared/tasks/bite/illustrated';
import { judgeLine } from '../../../../shared/tasks/bite/judge-line';
import { lineVolts } from '../../../../shared/tasks/bite/line-volts';
import { wireResistance } from '../../../../shared/tasks/bite/wire-resistance';
import type { WireRow } from '../../../../shared/tasks/bite/wire-rows';
import { toInside, type UnitSystem } from '../../../../shared/units/units';
import { formatNumber } from '../../numbers/format-number';
import { Notice } from '../../parts/notice';
import { ScrollRegion } from '../../parts/scroll-region';

const STATES = [
  ['clean', 'Clean'],
  ['weeds', 'In weeds'],
  ['pig', 'A pig touches'],
  ['pigInWeeds', 'A pig, in weeds'],
] as const;

/** Volts of every line in four states, and whether they are enough by the grower's own levels. */
export function BiteResult({ plan }: { plan: BitePlan }) {
  const { settings, units } = plan;
  const get = (key: keyof typeof settings): number => settings[key] ?? 0;
  const energizer = { volts: get('volts'), ohms: get('ohms') };
  const judged = plan.lines.map((line) => {
    const wire = plan.wires.find(({ name }) => name === line.wire);
    const ohmsPerMeter = wire ? ohmsOf(wire, units) : Number.NaN;
    const volts = lineVolts(
      energizer,
      { ...line, ohmsPerMeter },
      weedsOhmMeters(get('weeds'), units),
      get('pig'),
    );
    return { line, volts, verdict: judgeLine(volts, get('onFence'), get('delivered')) };
  });
  const illustrated = illustratedLabels(settings, units);
  const weak = judged.filter(({ verdict }) => verdict !== 'enough');
  return (
    <>
      {judged.map(({ line, volts, verdict }, at) => (
        <div key={`${at} ${line.name}`} class="answer">
          <h3>
            {line.name || 'Line'}: {verdict === 'enough' && illustrated.length > 0 ? ENOUGH_SO_FAR : verdict}
          </h3>
          <ScrollRegion label={`Volts of ${line.name}`}>
            <table>
              <tbody>
                {STATES.map(([key, words]) => (
                  <tr key={key}>
                    <th scope="row">{words}</th>
                    <td class="number">{formatNumber(Math.round(volts[key]))} V</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollRegion>
        </div>
      ))}
      {illustrated.length > 0 && (
        <Notice kind="warning">
          These volts rest on illustrations: {illustrated.join('; ')}. Type your own figures before you rely
          on “enough”.
        </Notice>
      )}
      {weak.length > 0 && (
        <Notice kind="warning">
          Below your levels: {weak.map(({ line }) => line.name).join(', ')}. What helps: a wire that conducts
          better, more wires tied together, a shorter line, mown growth, better grounding, a stronger
          energizer.
        </Notice>
      )}
    </>
  );
}

function ohmsOf(wire: WireRow, units: UnitSystem): number {
  return wire.typedOhms === undefined
    ? wireResistance(wire.strands)
    : toInside(wire.typedOhms, 'ohmsPerLength', units);
}
