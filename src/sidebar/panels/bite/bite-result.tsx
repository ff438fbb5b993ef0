import type { BitePlan } from '../../../../shared/tasks/bite/bite-block';
import { ENOUGH_SO_FAR, illustratedWords } from '../../../../shared/tasks/bite/illustrated';
import { judgePlan } from '../../../../shared/tasks/bite/judge-plan';
import { formatNumber } from '../../numbers/format-number';
import { SentencesNotice } from '../../parts/notice';
import { ScrollRegion } from '../../parts/scroll-region';
import * as words from './words';

const STATES = [
  ['clean', 'Clean'],
  ['weeds', 'In weeds'],
  ['pig', 'A pig touches'],
  ['pigInWeeds', 'A pig, in weeds'],
] as const;

/** Volts of every line in four states, and whether they are enough by the grower's own levels. */
export function BiteResult({ plan }: { plan: BitePlan }) {
  const judged = judgePlan(plan);
  const illustrated = illustratedWords(plan.settings, plan.units);
  return (
    <>
      {judged.map(({ line, volts, verdict, help }, at) => (
        <div key={`${at} ${line.name}`} class="answer">
          <h2>
            {line.name || 'Line'}: {verdict === 'enough' && illustrated.length > 0 ? ENOUGH_SO_FAR : verdict}
          </h2>
          {verdict === 'enough' && illustrated.length > 0 && <p>{words.TESTER_HELPS}</p>}
          {help && <p>{words.helpsMost(help.words, formatNumber(Math.round(help.volts)))}</p>}
          <ScrollRegion label={`Volts of ${line.name}`}>
            <table>
              <tbody>
                {STATES.map(([key, state]) => (
                  <tr key={key}>
                    <th scope="row">{state}</th>
                    <td class="number">{formatNumber(Math.round(volts[key]))} V</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollRegion>
        </div>
      ))}
      <SentencesNotice kind="warning" lead={words.EXAMPLES} sentences={illustrated} />
    </>
  );
}
