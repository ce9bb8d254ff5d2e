import { For } from 'solid-js';
import { card, uOfBarsMm } from '../../scale-card/geometry';
import { barsInUse } from '../card/card-checks';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { measureNew } from '../work/job';
import './start.css';

/** Bundled pictures, path-traced, with the words that describe them. */
const samples = ['sample-stud', 'sample-face', 'sample-cone'] as const;

/** Their card is drawn, not printed: its bars are what they should be. */
const drawnTrue = {
  horizontalMm: card.bars.horizontal.lengthMm,
  verticalMm: card.bars.vertical.lengthMm,
  uMm: uOfBarsMm.rule,
};

const address = (name: string) => `${import.meta.env.BASE_URL}samples/${name}`;

export function Samples() {
  const open = async (name: string) => {
    try {
      const response = await fetch(`${address(name)}.jpg`);
      if (!response.ok) throw new Error(String(response.status));
      await measureNew(await response.blob(), {
        bars: barsInUse() ?? drawnTrue,
        reference: { kind: 'auto', corners: null },
        gender: 'male',
      });
    } catch {
      notify(t().shell.error);
    }
  };
  return (
    <ul class="samples">
      <For each={samples}>
        {(name) => (
          <li>
            <button type="button" class="sample" data-sample={name} onClick={() => void open(name)}>
              <img
                src={`${address(name)}-small.jpg`}
                width="240"
                height="180"
                alt=""
                decoding="async"
              />
              <span class="small">{t().start.sampleNames[name]}</span>
            </button>
          </li>
        )}
      </For>
    </ul>
  );
}
