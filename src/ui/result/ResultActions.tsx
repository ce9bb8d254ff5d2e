import { t } from '../language/language';

export function ResultActions() {
  return (
    <button type="button" class="button" onClick={() => print()}>
      {t().result.print}
    </button>
  );
}
