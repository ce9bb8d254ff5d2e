import { expect } from '@playwright/test';
import { conclude } from '../../src/journey/7-next-reading/conclude';
import { newSheet } from '../../src/journey/8-sheet/new-sheet';
import { sheetToFile } from '../../src/journey/8-sheet/sheet-file';
import { exampleSheet } from '../journey/8-sheet/example';
import { chooseFile, onSize, openApp, unfold } from './support';
import { test } from './window';

/** A sheet file of a G 1/2 inside, its numbers given: 14 turns an inch, minor diameter 18.631 to 19.172 mm
 *  (ISO 228-1, from memory). */
async function femaleSheet() {
  const { sheet: example, photos } = await exampleSheet();
  const [shot] = example.shots;
  const measurement = {
    ...shot!.measurement,
    end: 'female' as const,
    pitchMm: { value: 25.4 / 14, u: 0.003 },
    majorDiameterMm: { value: 18.85, u: 0.05 },
  };
  const sheet = newSheet({
    ...{ title: 'Port', shots: [{ ...shot!, measurement }], measurement, readings: [] },
    conclusion: conclude(measurement, []),
    ...{ appVersion: 'test', now: new Date(0) },
  });
  const file = sheetToFile({ sheet, photos });
  if (!file.ok) throw new Error(file.reason);
  return {
    name: 'port.crestwise',
    mimeType: 'application/octet-stream',
    buffer: Buffer.from(file.value),
    sheet,
  };
}

onSize('desk', () => {
  test('of a female end the pages name the minor diameter, never the major', async ({ page }) => {
    const { sheet, ...file } = await femaleSheet();
    await openApp(page);
    await chooseFile(page, file);
    await page.waitForURL(/#\/counter\//);
    await page.goto(`./#/sheet/${sheet.id}`);
    await unfold(page);
    await expect(page.locator('.numbers')).toContainText('Minor diameter');
    await expect(page.locator('.budget')).toContainText('Minor diameter');
    await expect(
      page.locator('[aria-labelledby="threads-title"] .candidate').first(),
    ).toContainText('minor diameter as its table gives it');
    await expect(page.locator('main')).not.toContainText('Major diameter');
    // What is printed, too.
    await page.goto(`./#/result/${sheet.id}`);
    await expect(page.locator('.result-page')).toContainText(/Minor diameter 18\.85 ± 0\.10 mm/);
    await expect(page.locator('.result-page')).not.toContainText('Major diameter');
  });
});
