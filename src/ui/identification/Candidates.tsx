import { createMemo, For, Show } from 'solid-js';
import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import type { Reading } from '../../journey/6-candidates/reading';
import type { Conclusion } from '../../journey/7-next-reading/decision';
import { type Connection, hasSeat } from '../../standards/connections/connection';
import { percent } from '../language/format';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import { hashOf } from '../shell/route';
import { endWords } from './connection-words';
import { type Evidence, evidenceFor, type ListedThread } from './evidence';
import { likelihoodWord } from './likelihood-words';
import { readingsOnConnection, readingsOnThread } from './reading-evidence';
import { seatText } from './reading-text';
import { SectionDrawing } from './SectionDrawing';
import { dimensionsOf, type Tables } from './table-rows';
import { sizeWords } from './thread-words';
import './candidates.css';

const shownAtMost = 6;
/** Less than this is summed up in one line. */
const worthShowing = 0.002;

export function ThreadCandidates(props: {
  readonly conclusion: Conclusion;
  readonly measurement: ThreadMeasurement | null;
  readonly readings: readonly Reading[];
  readonly tables: Tables | null;
}) {
  const threadEvidence = (listed: ListedThread): readonly Evidence[] => {
    const row = props.tables?.thread(listed.designation) ?? null;
    return [
      ...(props.measurement ? evidenceFor(listed, props.measurement, row) : []),
      ...(row ? readingsOnThread(props.readings, row, props.conclusion.end) : []),
    ];
  };
  const sizeOf = ({ designation }: ListedThread) => {
    const row = props.tables?.thread(designation);
    return row ? sizeWords(row) : '';
  };
  const split = createMemo(() => {
    const all = props.conclusion.threads;
    const shown = all.filter(
      (c, i) => i === 0 || (i < shownAtMost && c.probability >= worthShowing),
    );
    const rest = all.filter((c) => !shown.includes(c));
    return { shown, rest, share: rest.reduce((sum, c) => sum + c.probability, 0) };
  });
  return (
    <section class="stack tight" aria-labelledby="threads-title">
      <h2 id="threads-title">{t().identification.candidates}</h2>
      <ol class="candidates">
        <For each={split().shown}>
          {(candidate) => (
            <li class="candidate">
              <div class="candidate-head">
                <strong>
                  {candidate.system === null ? t().identification.none : candidate.designation}
                </strong>
                <Likelihood
                  probability={candidate.probability}
                  likeliest={likeliestOf(props.conclusion)}
                />
              </div>
              <Show when={candidate.system !== null && candidate} keyed>
                {(listed) => (
                  <>
                    <p class="small soft">{sizeOf(listed)}</p>
                    <EvidenceList items={threadEvidence(listed)} />
                  </>
                )}
              </Show>
            </li>
          )}
        </For>
      </ol>
      <Show when={split().rest.length > 0}>
        <p class="small soft">
          {t().identification.more(split().rest.length)} {percent(split().share)}
        </p>
      </Show>
    </section>
  );
}

export function ConnectionCandidates(props: {
  readonly conclusion: Conclusion;
  readonly readings: readonly Reading[];
  readonly tables: Tables | null;
}) {
  const shown = createMemo(() =>
    props.conclusion.connections
      .filter((c, i) => i === 0 || (i < shownAtMost && c.probability >= worthShowing))
      .map((candidate) => {
        const rows = props.tables?.rows(candidate, props.conclusion.decision.thread) ?? [];
        const row = rows[0] ?? null;
        const thread = row?.thread ? props.tables?.thread(row.thread) : null;
        return { candidate, rows, row, thread: thread ?? null };
      }),
  );
  /** One scale for all drawings, so that a larger thread looks larger. */
  const widthMm = () =>
    Math.max(...shown().map(({ thread }) => (thread ? thread.basicMajorMm * 1.75 : 0)));
  return (
    <section class="stack tight" aria-labelledby="connections-title">
      <h2 id="connections-title">{t().identification.connections}</h2>
      <ol class="candidates connection-candidates">
        <For each={shown()}>
          {({ candidate, rows, row, thread }) => {
            const name = `${candidate.family} ${candidate.size}`;
            return (
              <li class="candidate">
                <div class="candidate-drawing">
                  <Show when={row && thread}>
                    <SectionDrawing
                      dimensions={dimensionsOf(thread!, row)}
                      name={t().identification.section(name)}
                      widthMm={widthMm()}
                    />
                  </Show>
                </div>
                <div class="stack tight">
                  <div class="candidate-head">
                    <strong>
                      <a href={hashOf({ screen: 'standards', query: candidate.family })}>{name}</a>
                    </strong>
                    <Likelihood
                      probability={candidate.probability}
                      likeliest={props.conclusion.connections[0]?.probability ?? 1}
                    />
                  </div>
                  <Show when={row} keyed>
                    {(found) => (
                      <p class="small soft">
                        {calledNames(found, props.tables)}
                        <br />
                        {found.thread}
                        <br />
                        {endWords(candidate)}
                        <br />
                        {seatsOf(rows)}
                      </p>
                    )}
                  </Show>
                  <EvidenceList items={row ? readingsOnConnection(props.readings, row) : []} />
                </div>
              </li>
            );
          }}
        </For>
      </ol>
    </section>
  );
}

/** What the trade calls it, in short. */
const calledNames = (row: Connection, tables: Tables | null): string =>
  [...new Set([tradeName(row.tradeName), ...(tables?.aliases(row) ?? [])])].slice(0, 3).join(' · ');

/** Forms of one end may seal differently. */
const seatsOf = (rows: readonly Connection[]): string =>
  [...new Set(rows.filter(hasSeat).map((row) => seatText(row.seat, row.end)))].join(
    ` ${t().trade.or} `,
  );

function EvidenceList(props: { readonly items: readonly Evidence[] }) {
  return (
    <Show when={props.items.length > 0}>
      <ul class="evidence small">
        <For each={props.items}>
          {(item) => (
            <li data-speaks={item.speaks}>
              <span class="visually-hidden">
                {item.speaks === 'for'
                  ? t().identification.speaksFor
                  : t().identification.speaksAgainst}
                :{' '}
              </span>
              {item.text}
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}

/** Of the threads; 'none of these' is no rival. */
const likeliestOf = ({ threads }: Conclusion): number =>
  threads.find((c) => c.system !== null)?.probability ?? 1;

function Likelihood(props: { readonly probability: number; readonly likeliest: number }) {
  return (
    <span class="likelihood">
      <span>{likelihoodWord(props.probability, props.likeliest)}</span>{' '}
      <b>{percent(props.probability)}</b>
      <svg viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
        <path class="whole" d="M0 2H100" />
        <path class="part" d={`M0 2H${(props.probability * 100).toFixed(2)}`} />
      </svg>
    </span>
  );
}
