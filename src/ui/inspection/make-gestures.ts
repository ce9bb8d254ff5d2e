import { onCleanup } from 'solid-js';

export interface GestureTarget {
  /** Viewer px. */
  move(dx: number, dy: number): void;
  /** About a viewer point. */
  zoom(factor: number, x: number, y: number): void;
  zoomed(): boolean;
}

/** Pan with one pointer, pinch with two, zoom with the wheel. Call inside an owner:
 *  the listeners go when it does. While the whole photo is shown, one finger scrolls the page. */
export function makeGestures(element: HTMLElement | SVGElement, target: GestureTarget): void {
  const held = new Map<number, { x: number; y: number }>();
  const place = (event: PointerEvent | WheelEvent) => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };

  const down = (event: PointerEvent) => {
    if ((event.target as Element).closest('.help-handle, .end-reach, .end-tag')) return;
    if (event.button !== 0) return;
    held.set(event.pointerId, place(event));
    if (event.pointerType === 'mouse' || target.zoomed())
      element.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent) => {
    const before = held.get(event.pointerId);
    if (!before) return;
    const now = place(event);
    const other = [...held].find(([id]) => id !== event.pointerId)?.[1];
    held.set(event.pointerId, now);
    if (!other) {
      if (target.zoomed()) target.move(before.x - now.x, before.y - now.y);
      return;
    }
    const spanBefore = Math.hypot(before.x - other.x, before.y - other.y);
    const spanNow = Math.hypot(now.x - other.x, now.y - other.y);
    if (spanBefore > 0)
      target.zoom(spanNow / spanBefore, (now.x + other.x) / 2, (now.y + other.y) / 2);
    target.move((before.x - now.x) / 2, (before.y - now.y) / 2);
  };
  const up = (event: PointerEvent) => held.delete(event.pointerId);
  const wheel = (event: WheelEvent) => {
    // Without a modifier the wheel scrolls the page until the photo is zoomed in.
    if (!event.ctrlKey && !event.metaKey && !target.zoomed() && event.deltaY > 0) return;
    event.preventDefault();
    const at = place(event);
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
    target.zoom(Math.exp((-event.deltaY * lines) / 400), at.x, at.y);
  };

  const listen = element as HTMLElement;
  listen.addEventListener('pointerdown', down);
  listen.addEventListener('pointermove', move);
  listen.addEventListener('pointerup', up);
  listen.addEventListener('pointercancel', up);
  listen.addEventListener('wheel', wheel, { passive: false });
  onCleanup(() => {
    listen.removeEventListener('pointerdown', down);
    listen.removeEventListener('pointermove', move);
    listen.removeEventListener('pointerup', up);
    listen.removeEventListener('pointercancel', up);
    listen.removeEventListener('wheel', wheel);
  });
}
