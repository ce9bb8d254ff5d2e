import { createEffect, createSignal, For, on } from 'solid-js';
import { t } from '../language/language';
import type { CounterAnswer } from '../work/open-sheet';
import { change, openSheet } from '../work/sheets';

/** What the counter says to the sheet; kept with it and sent back with it. */
export function CounterPanel() {
  const answer = (): CounterAnswer =>
    openSheet()!.sheet.counter ?? {
      verdict: 'open',
      identified: null,
      by: '',
      remarks: '',
      parts: [],
      at: '',
    };
  const [parts, setParts] = createSignal('');
  const [remarks, setRemarks] = createSignal('');
  createEffect(
    on(
      () => openSheet()!.sheet.id,
      () => {
        setParts(
          answer()
            .parts.map((part) => part.number)
            .join('\n'),
        );
        setRemarks(answer().remarks);
      },
    ),
  );
  const write = (part: Partial<CounterAnswer>) =>
    void change(({ sheet }) => ({
      sheet: {
        ...sheet,
        counter: {
          ...answer(),
          remarks: remarks().slice(0, 4000),
          parts: parts()
            .split('\n')
            .map((line) => line.trim().slice(0, 120))
            .filter((line) => line !== '')
            .slice(0, 50)
            .map((number) => ({ number, note: '' })),
          ...part,
          at: new Date().toISOString(),
        },
      },
    }));
  return (
    <section class="counter" aria-labelledby="counter-title">
      <h2 id="counter-title">{t().result.counter}</h2>
      <fieldset>
        <legend class="visually-hidden">{t().sheet.state}</legend>
        <div class="row">
          <For
            each={
              [
                ['confirmed', t().result.confirm],
                ['rejected', t().result.reject],
              ] as const
            }
          >
            {([verdict, label]) => (
              <button
                type="button"
                class="button"
                aria-pressed={answer().verdict === verdict}
                onClick={() => write({ verdict: answer().verdict === verdict ? 'open' : verdict })}
              >
                {label}
              </button>
            )}
          </For>
          <span class="soft" role="status">
            {
              t().result.verdict[
                answer().verdict === 'open'
                  ? 'none'
                  : (answer().verdict as 'confirmed' | 'rejected')
              ]
            }
          </span>
        </div>
      </fieldset>
      <div class="counter-fields">
        <label class="field">
          <span class="small soft">{t().result.partNumbers}</span>
          <textarea
            rows={2}
            value={parts()}
            onInput={(event) => setParts(event.currentTarget.value)}
            onChange={() => write({})}
          />
        </label>
        <label class="field">
          <span class="small soft">{t().result.notes}</span>
          <textarea
            rows={2}
            value={remarks()}
            onInput={(event) => setRemarks(event.currentTarget.value)}
            onChange={() => write({})}
          />
        </label>
      </div>
    </section>
  );
}
