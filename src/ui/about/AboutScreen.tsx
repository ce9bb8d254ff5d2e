import { For } from 'solid-js';
import { version } from '../../../package.json';
import { t } from '../language/language';
import { Cautions } from '../result/Cautions';

export function AboutScreen() {
  return (
    <div class="stack measure-width">
      <h1>{t().about.title}</h1>
      <For each={t().about.text}>{(paragraph) => <p>{paragraph}</p>}</For>
      <Cautions />
      <p>
        <a href={`${import.meta.env.BASE_URL}licences.txt`}>{t().about.licences}</a>
      </p>
      <p class="small soft">Crestwise {version}</p>
    </div>
  );
}
