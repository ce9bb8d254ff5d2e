import { For, type JSX, Show } from 'solid-js';
import type { Thread } from '../../standards/thread';
import { pitchWords } from '../identification/thread-words';
import { t } from '../language/language';
import type { ResultFacts } from './result-facts';

/** The thread and what is known of the connection on it. */
export function FactList(props: {
  readonly decided: string | null;
  readonly thread: Thread | null;
  readonly facts: ResultFacts | null;
}) {
  return (
    <dl class="result-facts">
      <Fact name={t().result.thread}>
        <strong>{props.decided ?? t().identification.open}</strong>
        <Show when={props.decided !== null && props.thread} keyed>
          {(row) => (
            <>
              <br />
              <span class="small soft">{pitchWords(row)}</span>
            </>
          )}
        </Show>
      </Fact>
      <For
        each={props.facts?.facts ?? []}
        fallback={<Fact name={t().result.family}>{t().identification.open}</Fact>}
      >
        {(one) => (
          <Fact name={one.name}>
            <For each={one.lines}>
              {(line, i) => (
                <>
                  <Show when={i() > 0}>
                    <br />
                  </Show>
                  {line}
                </>
              )}
            </For>
          </Fact>
        )}
      </For>
    </dl>
  );
}

function Fact(props: { readonly name: string; readonly children: JSX.Element }) {
  return (
    <div>
      <dt class="soft">{props.name}</dt>
      <dd>{props.children}</dd>
    </div>
  );
}
