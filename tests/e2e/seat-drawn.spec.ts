import { expect, type Page } from '@playwright/test';
import {
  axeViolationsInBothSchemes,
  onBothSizes,
  onSize,
  openMeasuredPhoto,
  openMeasuredSample,
  unfold,
} from './support';
import { test } from './window';

const overflow = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Renders of known ends (their truth files): of a 9/16-18 with a 37° cone, of a stud end with an O-ring under its hex. */
const coned = 'd21';
const ringed = 'd26';

async function openShowing(page: Page, name: string): Promise<void> {
  await openMeasuredPhoto(page, `photos/${name}.jpg`);
  await unfold(page);
}

onBothSizes((size) => {
  test('a ring that the end looks to have is drawn and asked about; No takes it away and opens the connection', async ({
    page,
  }) => {
    await openShowing(page, ringed);
    const lines = page.locator('.photo-view .layer-ends path.casing');
    const crop = page.locator('.thread-picture .crop-feature');
    const connection = page.locator('.decision').getByText('ISO 11926');
    await expect(lines).toHaveCount(1);
    await expect(crop).toContainText('O-ring');
    await expect(connection.first()).toBeVisible();
    const claim = page.getByRole('region', { name: 'The photo shows of this end' });
    await expect(claim).toContainText('O-ring under the hex');
    await claim.getByRole('button', { name: 'No, it is something else' }).click();
    await expect(lines).toHaveCount(0);
    await expect(crop).toHaveCount(0);
    await expect(connection).toHaveCount(0);
  });

  test('the cone that is claimed is drawn; a tap leads to the question; No takes it away, undo brings it back', async ({
    page,
  }) => {
    await openShowing(page, coned);
    const lines = page.locator('.photo-view .layer-ends path.casing');
    const crop = page.locator('.thread-picture .crop-feature');
    const tag = page.locator('.end-tag').getByRole('button', { name: 'Cone 37°: is it so?' });
    const onCrop = page.locator('.thread-frame').getByRole('button', { name: 'Cone 37°' });
    const claim = page.getByRole('region', { name: 'The photo shows of this end' });
    await expect(lines).toHaveCount(1);
    await expect(crop).toHaveCount(1);
    await expect(crop).toContainText('Cone 37°');
    await expect(page.locator('.thread-picture')).toHaveAttribute('aria-label', /Cone 37°/);

    // Its name, its lines, the picture of the thread, and the keyboard.
    const leadsToQuestion = async (way: () => Promise<void>) => {
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      await way();
      await expect(claim).toBeFocused();
      await expect(claim).toBeInViewport({ ratio: 1 });
    };
    const press = size === 'phone' ? 'tap' : 'click';
    await page.getByRole('button', { name: 'Thread', exact: true }).click();
    await leadsToQuestion(() => tag[press]());
    await leadsToQuestion(() => onCrop[press]());
    await leadsToQuestion(async () => {
      await tag.focus();
      await page.keyboard.press('Enter');
    });
    const reach = page.locator('.layer-ends .end-reach');
    await leadsToQuestion(async () => {
      await reach.scrollIntoViewIfNeeded();
      // Half way along the lower side: the middle of both lies between them.
      const at = await reach.evaluate((path: SVGPathElement) => {
        const { x, y } = path.getPointAtLength(0.8 * path.getTotalLength());
        const on = new DOMPoint(x, y).matrixTransform(path.getScreenCTM()!);
        return [on.x, on.y] as const;
      });
      await (size === 'phone' ? page.touchscreen.tap(...at) : page.mouse.click(...at));
    });
    for (const button of [tag, onCrop]) {
      const box = (await button.boundingBox())!;
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
    }

    await page.getByLabel('Seat', { exact: true }).uncheck();
    await expect(lines).toHaveCount(0);
    await expect(tag).toHaveCount(0);
    await page.getByLabel('Seat', { exact: true }).check();
    await expect(lines).toHaveCount(1);

    await claim.getByRole('button', { name: 'No, it is something else' }).click();
    await expect(lines).toHaveCount(0);
    await expect(tag).toHaveCount(0);
    await expect(crop).toHaveCount(0);
    await expect(page.locator('.thread-picture')).toBeVisible();
    await expect(page.getByLabel('Seat', { exact: true })).toHaveCount(0);
    const readings = page.locator('.reading-list li');
    await readings.getByRole('button', { name: 'Remove' }).click();
    await expect(lines).toHaveCount(1);
    await expect(crop).toHaveCount(1);

    // Borne out, it stays, and asks no more.
    await claim.getByRole('button', { name: 'Yes, so it is' }).click();
    await expect(claim).toHaveCount(0);
    await expect(lines).toHaveCount(1);
    await expect(page.locator('.end-tag')).toHaveText('Cone 37°');
    await expect(tag).toHaveCount(0);
    await expect(onCrop).toHaveCount(0);
  });

  test('is accessible, overflows nowhere, and is named in every language clear of the figures', async ({
    page,
  }) => {
    await openShowing(page, coned);
    await page.getByRole('button', { name: 'Thread', exact: true }).click();
    expect(await axeViolationsInBothSchemes(page)).toEqual([]);
    for (const [code, name] of [
      ['de', 'Kegel 37°'],
      ['fr', 'Cône 37°'],
      ['es', 'Cono 37°'],
    ] as const) {
      await page.locator('.language-picker select').selectOption(code);
      await expect(page.locator('.end-tag')).toHaveText(name);
      const plates = await page.locator('.thread-picture rect').evaluateAll((rects) =>
        rects.map((rect) => {
          const { left, right, top, bottom } = rect.getBoundingClientRect();
          return { left, right, top, bottom };
        }),
      );
      expect(plates).toHaveLength(3);
      for (const [i, a] of plates.entries())
        for (const b of plates.slice(i + 1))
          expect(
            a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top,
          ).toBe(true);
    }
    await page.setViewportSize({ width: 320, height: 700 });
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
  });
});

onSize('phone', () => {
  test('where the end is asked for, what is drawn leads to its drawings, and another choice takes it away', async ({
    page,
  }) => {
    await openMeasuredSample(page, 'sample-cone');
    await unfold(page);
    const crop = page.locator('.thread-picture .crop-feature');
    await expect(crop).toContainText('Cone 45°');
    await expect(page.locator('.seat-claim')).toHaveCount(0);
    await page.locator('.thread-frame').getByRole('button', { name: 'Cone 45°' }).tap();
    const asked = page.locator('section', { has: page.locator('#ask-title') });
    await expect(asked.locator(':focus')).toHaveCount(1);
    await expect(page.getByRole('heading', { name: 'Look at the end' })).toBeInViewport();
    const otherCone = asked.locator('[data-seat="cone-37"]');
    if (!(await otherCone.isVisible())) await asked.locator('.other-seats > summary').click();
    await otherCone.click();
    await expect(crop).toHaveCount(0);
    await page.locator('.reading-list li').getByRole('button', { name: 'Remove' }).click();
    await expect(crop).toHaveCount(1);
  });
});
