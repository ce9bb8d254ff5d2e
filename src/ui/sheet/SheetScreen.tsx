import { createMemo, createResource, createSignal, Match, onMount, Show, Switch } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import { ConnectionCandidates, ThreadCandidates } from '../identification/Candidates';
import { Contradictions } from '../identification/Contradictions';
import { withReadings } from '../identification/conclusion-actions';
import { DecisionBlock } from '../identification/DecisionBlock';
import { AskedReading, ReadingList } from '../identification/Readings';
import { loadTables } from '../identification/table-rows';
import { Inspection } from '../inspection/Inspection';
import { t } from '../language/language';
import { Cautions } from '../result/Cautions';
import { notify } from '../shell/notices';
import { hashOf } from '../shell/route';
import { WearNote } from '../wear/WearNote';
import { openById, openSheet } from '../work/sheets';
import { setToolsAtHand, toolsAtHand } from '../work/tools';
import { HandOver } from './HandOver';
import { SheetHead } from './SheetHead';
import './sheet.css';

export function SheetScreen(props: { readonly id: string }) {
  const [state, setState] = createSignal<'opening' | 'open' | 'missing'>('opening');
  onMount(async () => setState((await openById(props.id)) ? 'open' : 'missing'));
  return (
    <Switch>
      <Match when={state() === 'opening'}>
        <div class="screen-wait" />
      </Match>
      <Match when={state() === 'missing'}>
        <div class="stack">
          <h1>{t().sheet.title}</h1>
          <p>{t().sheet.missing}</p>
          <p>
            <a href={hashOf({ screen: 'drawer' })}>{t().drawer.title}</a>
          </p>
        </div>
      </Match>
      <Match when={state() === 'open' && openSheet()}>
        <OpenedSheet />
      </Match>
    </Switch>
  );
}

function OpenedSheet() {
  const sheet = () => openSheet()!.sheet;
  const [tables] = createResource(loadTables);
  const shot = createMemo(() => sheet().shots[0] ?? null);
  /** Shares among threads of which none fits say nothing. */
  const nothingFits = () => sheet().conclusion.nearest !== null;
  const settled = () => sheet().conclusion.decision.state === 'settled';

  const add = async (reading: Reading) => {
    await withReadings([...sheet().readings, reading], toolsAtHand());
    // The form it came from is gone; the answer to it stands here.
    document.getElementById('decision-title')?.focus();
  };
  const remove = (index: number) => {
    const before = sheet().readings;
    void withReadings(
      before.filter((_, i) => i !== index),
      toolsAtHand(),
    );
    notify(t().identification.removed, {
      label: t().drawer.undo,
      run: () => void withReadings(before, toolsAtHand()),
    });
  };

  return (
    <article class="sheet" classList={{ 'sheet-without-photo': shot() === null }}>
      <SheetHead />
      <div class="sheet-answer stack">
        <DecisionBlock conclusion={sheet().conclusion} />
        <Contradictions
          contradictions={sheet().conclusion.contradictions}
          readings={sheet().readings}
        />
        <Show when={settled()}>
          <a class="button strong" href={hashOf({ screen: 'result', id: sheet().id })}>
            {t().sheet.result}
          </a>
        </Show>
        <Show when={!settled()}>
          <AskedReading
            ask={sheet().conclusion.decision.ask}
            end={sheet().conclusion.end}
            tools={toolsAtHand()}
            onTools={(tools) => {
              setToolsAtHand(tools);
              void withReadings(sheet().readings, tools);
            }}
            onReading={(reading) => void add(reading)}
          />
        </Show>
        <ReadingList readings={sheet().readings} end={sheet().conclusion.end} onRemove={remove} />
        <WearNote />
      </div>
      <Show when={shot()}>
        <div class="sheet-photo">
          <Inspection />
        </div>
      </Show>
      <div class="sheet-more stack">
        <Show when={sheet().conclusion.connections.length > 0 && !nothingFits()}>
          <ConnectionCandidates
            conclusion={sheet().conclusion}
            readings={sheet().readings}
            tables={tables() ?? null}
          />
        </Show>
        <Show when={!nothingFits()}>
          <ThreadCandidates
            conclusion={sheet().conclusion}
            measurement={sheet().measurement}
            readings={sheet().readings}
            tables={tables() ?? null}
          />
        </Show>
        <Show when={settled()}>
          <details class="panel">
            <summary>{t().identification.addReading}</summary>
            <AskedReading
              ask={null}
              end={sheet().conclusion.end}
              tools={toolsAtHand()}
              onTools={setToolsAtHand}
              onReading={(reading) => void add(reading)}
            />
          </details>
        </Show>
        <Cautions />
        <HandOver remarks />
      </div>
    </article>
  );
}
