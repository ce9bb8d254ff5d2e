import { Show } from 'solid-js';
import { connectionTitle } from '../identification/connection-words';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import type { Sheet } from '../work/open-sheet';
import './result.css';

/** What the counter answered, for whoever sent the sheet. */
export function AnswerBlock(props: { readonly sheet: Sheet }) {
  return (
    <Show when={props.sheet.counter} keyed>
      {(answer) => (
        <section
          class="answer stack tight"
          data-verdict={answer.verdict}
          aria-labelledby="answer-title"
        >
          <h2 id="answer-title">{t().loop.answerTitle}</h2>
          <p>
            {answer.verdict === 'open'
              ? t().loop.noVerdict
              : answer.verdict === 'rejected'
                ? t().loop.rejectedText
                : answer.identified
                  ? t().loop.identifiedText
                  : t().loop.confirmedText}
          </p>
          <dl class="result-facts">
            <Show when={answer.verdict === 'confirmed' && answer.identified} keyed>
              {(it) => (
                <div>
                  <dt class="soft">{t().loop.identified}</dt>
                  <dd>
                    <strong>
                      {[it.thread, it.connection && connectionTitle(it.connection)]
                        .filter((part) => part)
                        .join(' · ')}
                    </strong>
                  </dd>
                </div>
              )}
            </Show>
            <Show when={answer.parts.length > 0}>
              <div>
                <dt class="soft">{t().loop.parts}</dt>
                <dd>
                  <strong>{answer.parts.map((part) => part.number).join(', ')}</strong>
                </dd>
              </div>
            </Show>
            <Show when={answer.remarks}>
              <div>
                <dt class="soft">{t().loop.notes}</dt>
                <dd class="result-remarks">{answer.remarks}</dd>
              </div>
            </Show>
          </dl>
          <p class="small soft">{t().loop.judged(answer.by, dateTime(answer.at))}</p>
        </section>
      )}
    </Show>
  );
}
