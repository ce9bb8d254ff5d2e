/** To the reading that is asked for. */
export function goToQuestion(): void {
  const title = document.getElementById('ask-title');
  title?.scrollIntoView({ block: 'start', behavior: 'smooth' });
  title?.closest('section')?.querySelector<HTMLElement>('button, input, select')?.focus({
    preventScroll: true,
  });
}

/** From what is drawn on a photo to the question about it; where the end is asked for, its drawings are the question. */
export function goToClaim(): void {
  const claim = document.querySelector<HTMLElement>('.seat-claim');
  if (!claim) goToQuestion();
  claim?.scrollIntoView({ block: 'center' });
  claim?.focus({ preventScroll: true });
}
