import type { PlanWords } from '../../../../shared/plan/explain-plan';
import type { PlanRules } from '../../../../shared/plan/model';
import { Button } from '../../parts/button';
import { Notice } from '../../parts/notice';

interface Props {
  readonly kind: 'good' | 'note' | 'warning' | 'problem';
  readonly words: PlanWords;
  readonly onUse: (rules: PlanRules) => void;
}

/** How good the plan is, and what would mend it, each with a button that does it where the rules alone change. */
export function PlanWordsShown({ kind, words, onUse }: Props) {
  return (
    <Notice kind={kind}>
      {words.score.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {words.mend && <p>{words.mend}</p>}
      {words.offers.length > 0 && (
        <div class="offers">
          {words.offers.map(({ button, rules }) => (
            <Button key={button} onPress={() => onUse(rules)}>
              {button}
            </Button>
          ))}
        </div>
      )}
    </Notice>
  );
}
