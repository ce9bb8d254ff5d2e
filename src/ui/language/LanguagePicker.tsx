import { For } from 'solid-js';
import { type Language, language, languages, setLanguage, t } from './language';

export function LanguagePicker() {
  return (
    <label class="language-picker">
      <span class="visually-hidden">{t().shell.language}</span>
      <select
        value={language()}
        onChange={(event) => void setLanguage(event.currentTarget.value as Language)}
      >
        <For each={Object.entries(languages)}>
          {([code, name]) => (
            <option value={code} lang={code} selected={code === language()}>
              {name}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
