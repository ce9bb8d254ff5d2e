import { t } from '../language/language';
import { HandMarks } from '../reference/HandMarks';
import type { LoupePhoto } from '../reference/Loupe';
import type { Hand } from './hand';
import type { History } from './history';
import type { ShownPart } from './view-box';

/** The two ends of the axis, or two graduations of a rule, on the photo. */
export function HelpHandles(props: {
  readonly history: History<Hand>;
  readonly view: ShownPart;
  readonly of: LoupePhoto;
}) {
  const hand = () => props.history.now();
  const label = (end: 'a' | 'b') => {
    const { handleA, handleB, ruleA, ruleB } = t().inspection;
    if (hand().mode === 'axis') return end === 'a' ? handleA : handleB;
    return end === 'a' ? ruleA : ruleB;
  };
  return (
    <>
      <path class="help-line" d={`M${hand().a[0]} ${hand().a[1]}L${hand().b[0]} ${hand().b[1]}`} />
      <HandMarks
        history={props.history}
        keys={['a', 'b'] as const}
        at={(end) => hand()[end]}
        moved={(end, to) => ({ ...hand(), [end]: to })}
        label={label}
        attribute="data-handle"
        of={props.of}
        view={props.view}
      />
    </>
  );
}
