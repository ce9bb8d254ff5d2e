import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { stripJpeg } from '../../src/journey/8-sheet/jpeg-strip';
import { sizes } from './support';

const folder = new URL('../../test-results/', import.meta.url).pathname;

/** For test.use: a phone whose camera shows one photo, held perfectly still. Chromium plays a file
 *  of JPEGs as its camera. */
export function phoneSeeing(photo: string) {
  const film = `${folder}${basename(photo, '.jpg')}.mjpeg`;
  mkdirSync(folder, { recursive: true });
  const still = stripJpeg(new Uint8Array(readFileSync(photo)));
  if (still.ok) writeFileSync(film, Buffer.concat([still.value.bytes, still.value.bytes]));
  return {
    ...sizes.phone,
    locale: 'en-GB',
    permissions: ['camera'],
    launchOptions: {
      executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
        `--use-file-for-fake-video-capture=${film}`,
      ],
    },
  };
}
