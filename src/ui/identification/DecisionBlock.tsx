import { Show } from 'solid-js';
import type { Conclusion } from '../../journey/7-next-reading/decision';
import { number, percent } from '../language/format';
import { t } from '../language/language';
import { endWords } from './connection-words';
import { headline } from './headline';
import { likelihoodWord } from './likelihood-words';
import { kindWords } from './reading-text';
import './decision.css';

/** The answer, as two lines of a title block: the thread, and the connection. */
export function DecisionBlock(props: { readonly conclusion: Conclusion }) {
  const decision = () => props.conclusion.decision;
  /** None where no thread fits. */
  const likeliest = () => {
    if (props.conclusion.nearest) return null;
    const first = props.conclusion.threads.find((c) => c.system !== null);
    return first?.system ? first : null;
  };
  /** A settled thread that no listed connection uses leaves nothing open. */
  const noneWritten = () =>
    decision().state === 'settled' ? t().identification.noConnection : t().identification.open;
  return (
    <section
      class="decision"
      data-state={decision().state}
      data-contradicted={props.conclusion.contradictions.length > 0}
      aria-labelledby="decision-title"
      aria-live="polite"
    >
      <h2 id="decision-title" class="decision-lead" tabIndex={-1}>
        {headline(props.conclusion)}
      </h2>
      <dl class="decision-lines">
        <div>
          <dt class="caps">{t().identification.thread}</dt>
          <dd classList={{ open: decision().thread === null }} data-testid="decided-thread">
            <Show
              when={decision().thread}
              fallback={
                <Show when={decision().state !== 'unlisted' && likeliest()} fallback="—" keyed>
                  {(first) => (
                    <>
                      {first.designation}{' '}
                      <span class="small">
                        {likelihoodWord(first.probability)} ({percent(first.probability)})
                      </span>
                    </>
                  )}
                </Show>
              }
            >
              {decision().thread}
            </Show>
          </dd>
        </div>
        <div>
          <dt class="caps">{t().identification.connection}</dt>
          <dd classList={{ open: decision().connection === null }} data-testid="decided-connection">
            <Show when={decision().connection} fallback={noneWritten()} keyed>
              {(connection) => (
                <>
                  {connection.family} {connection.size}
                  <span class="small"> {endWords(connection)}</span>
                </>
              )}
            </Show>
          </dd>
        </div>
      </dl>
      <Show when={props.conclusion.hand === 'left'}>
        <p class="alert">
          <strong>{t().trade.leftHand}.</strong> {t().trade.leftHandWarning}
        </p>
      </Show>
      <Show when={props.conclusion.nearest} keyed>
        {({ thread, offMm, end }) => (
          <p>
            {t().trade.nearest(
              thread,
              `${number(Math.abs(offMm), 1)} mm`,
              offMm > 0,
              end === 'male',
            )}
          </p>
        )}
      </Show>
      <Show when={decision().missing} keyed>
        {({ reading, tools }) => (
          <p>
            {t().trade.missing(
              kindWords(reading).name,
              tools.map((tool) => t().identification.tools[tool]).join(` ${t().trade.or} `),
            )}
          </p>
        )}
      </Show>
      <Show when={decision().state === 'unlisted'}>
        <p class="small">{t().identification.unlistedText}</p>
      </Show>
    </section>
  );
}
