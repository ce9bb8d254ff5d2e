import type { PhotoPoint } from '../../journey/overlay';

/** What moves a mark on the photo: by pointer, or by arrow keys (1 px, with Shift 10 px). A drag is one
 *  step of the history. Listeners end with the element. */
export function makeMark(on: {
  readonly at: () => PhotoPoint;
  readonly toPhoto: (event: PointerEvent) => PhotoPoint;
  readonly move: (to: PhotoPoint, begins: boolean) => void;
  readonly held: (held: boolean) => void;
}) {
  let begun = false;
  return {
    onPointerDown(event: PointerEvent) {
      begun = false;
      event.stopPropagation();
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
      on.held(true);
    },
    onPointerMove(event: PointerEvent) {
      if (!(event.currentTarget as Element).hasPointerCapture(event.pointerId)) return;
      on.move(on.toPhoto(event), !begun);
      begun = true;
    },
    onLostPointerCapture() {
      on.held(false);
    },
    onKeyDown(event: KeyboardEvent) {
      const step = event.shiftKey ? 10 : 1;
      const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[
        event.key
      ];
      if (!by) return;
      event.preventDefault();
      event.stopPropagation();
      const [x, y] = on.at();
      on.move([x + by[0] * step, y + by[1] * step], true);
    },
    onFocusIn() {
      on.held(true);
    },
    onFocusOut() {
      on.held(false);
    },
  };
}
