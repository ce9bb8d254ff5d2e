import { expect } from '@playwright/test';
import { decidedConnection, onSize, openMeasuredPhoto, unfold } from './support';
import { test } from './window';

onSize('phone', () => {
  // d21 is a render of a 9/16-18 with a 37° cone (its truth file): ISO 8434-2 size -6.
  test('a cone that the photo shows is claimed; denied, its connection no longer leads; undone, it does', async ({
    page,
  }) => {
    await openMeasuredPhoto(page, 'photos/d21.jpg');
    await unfold(page);
    const claim = page.getByRole('region', { name: 'The photo shows of this end' });
    const first = page.locator('.connection-candidates .candidate').first();
    const readings = page.locator('.reading-list li');
    await expect(claim).toContainText('Outside cone, 37° to the axis');
    await expect(first).toContainText('ISO 8434-2 -6');
    const claimed = (await first.locator('.likelihood').textContent())!;

    await claim.getByRole('button', { name: 'No, it is something else' }).click();
    await expect(readings).toContainText('Denied: the photo is wrong about the end');
    await expect(claim).toHaveCount(0);
    await expect(first).not.toContainText('ISO 8434-2');
    await expect(page.getByRole('heading', { name: 'Look at the end' })).toBeVisible();

    await readings.getByRole('button', { name: 'Remove' }).click();
    await expect(claim).toContainText('Outside cone, 37° to the axis');
    await expect(readings).toHaveCount(0);
    await expect(first).toContainText('ISO 8434-2 -6');
    await expect(first.locator('.likelihood')).toHaveText(claimed);
    // The note of the removal brings the denial back.
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(claim).toHaveCount(0);
    await expect(first).not.toContainText('ISO 8434-2');

    await readings.getByRole('button', { name: 'Remove' }).click();
    await claim.getByRole('button', { name: 'Yes, so it is' }).click();
    await expect(page.locator('.decision[data-state="settled"]')).toBeVisible();
    await expect(decidedConnection(page)).toContainText('ISO 8434-2 -6');
  });
});
