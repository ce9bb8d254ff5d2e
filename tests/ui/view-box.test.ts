import { describe, expect, it } from 'vitest';
import { around, fit, moveBy, zoomAbout } from '../../src/ui/inspection/view-box';

const photo = { width: 4000, height: 3000 };
const viewer = { width: 400, height: 300 };

describe('the part of the photo that is shown', () => {
  it('begins with the whole photo, pixel centres at integers', () => {
    const whole = fit(photo, viewer);
    expect(whole).toEqual({ x: -0.5, y: -0.5, width: 4000, height: 3000 });
  });

  it('keeps the point under the finger while zooming', () => {
    const at = [1200, 900] as const;
    const before = fit(photo, viewer);
    const after = zoomAbout(before, 3, at, photo, viewer);
    const share = (view: typeof before) => (at[0] - view.x) / view.width;
    expect(share(after)).toBeCloseTo(share(before), 9);
    expect(after.width).toBeCloseTo(before.width / 3, 9);
  });

  it('never leaves the photo, nor zooms out beyond it', () => {
    const near = zoomAbout(fit(photo, viewer), 8, [10, 10], photo, viewer);
    const moved = moveBy(near, -1e6, 1e6, photo);
    expect(moved.x).toBe(-0.5);
    expect(moved.y + moved.height).toBeCloseTo(2999.5, 6);
    expect(zoomAbout(near, 1e-6, [2000, 1500], photo, viewer).width).toBe(4000);
  });

  it('centres a photo of another shape', () => {
    const tall = fit({ width: 1500, height: 2000 }, { width: 400, height: 300 });
    expect(tall.height).toBe(2000);
    expect(tall.x + tall.width / 2).toBeCloseTo(749.5, 9);
  });

  it('frames the thread with a margin', () => {
    const view = around(
      [
        [1000, 1000],
        [1300, 1100],
      ],
      photo,
      viewer,
    );
    expect(view.x).toBeLessThan(1000);
    expect(view.x + view.width).toBeGreaterThan(1300);
    expect(view.width).toBeLessThan(600);
  });
});
