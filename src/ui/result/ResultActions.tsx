import { t } from '../language/language';
import { fileName } from '../sheet/HandOver';
import { saveFile } from '../widgets/save-file';
import { openSheet } from '../work/sheets';

export function ResultActions() {
  const pdf = async () => {
    const item = openSheet();
    if (!item) return;
    const [{ resultPage }, { resultPdf }] = await Promise.all([
      import('./result-page'),
      import('../../handover/result-pdf'),
    ]);
    const bytes = await resultPdf(await resultPage(item));
    saveFile(new Blob([bytes.slice()], { type: 'application/pdf' }), fileName(item.sheet, '.pdf'));
  };
  return (
    <div class="row">
      <button type="button" class="button" onClick={() => print()}>
        {t().result.print}
      </button>
      <button type="button" class="button" onClick={() => void pdf()}>
        {t().result.pdf}
      </button>
    </div>
  );
}
