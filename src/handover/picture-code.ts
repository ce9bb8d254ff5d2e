import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { z } from 'zod';
import { readSheet } from '../journey/8-sheet/read-sheet';
import type { Sheet } from '../journey/8-sheet/sheet-schema';
import { ok, type Result, refuse } from '../quantity/result';
import { fromBase45, toBase45 } from './base45';
import { type Coded, codedSchema } from './coded-schema';
import { details, foldSheet, type PhotoInPicture, unfoldSheet } from './coded-sheet';

/** Text of the QR code on a shared picture: a mark, then deflated JSON in base 45. */
const mark = 'CRESTWISE:';

/** QR version 19 at level M: 93 modules a side (ISO/IEC 18004:2015, table 7). */
const maxCharacters = 909;
const maxJsonBytes = 64_000;

/** Part of format version 1: what nearly every code contains, most frequent last. What came later is
 *  spelt out in the code instead: codes refer to places in here, and those must not move. */
const dictionary = strToU8(
  [
    '"kind":"caliper-id","kind":"rule-od","kind":"seat","seat":"cone-60","seat":"cone-30","seat":"cone-24"',
    '"seat":"cone-45","seat":"cone-37","seat":"flat-face-o-ring","seat":"o-ring-at-hex","seat":"flat-washer-face"',
    '"kind":"taper","taper":"tapered","taper":"straight","kind":"caliper-od","mm":"kind":"pitch-gauge","pitchMm":',
    'print-unchecked no-focal-length one-side-only card-not-flat resting-unknown few-markers ruler-without-pose',
    'SAE J512 SAE J514 ISO 6149 ISO 1179 ISO 9974 ISO 7-1 ASME B1.20.1 ISO 11926 ISO 8434-6 ISO 8434-1 ISO 8434-2 ISO 8434-3',
    '["NPT","["R","["G","["M","M["UN","-16 UN","-12 UN","unlisted","needs-reading","settled"',
    '"k":{"verdict":"rejected","verdict":"confirmed","remarks":"","parts":[{"number":"","note":""}],"at":"2026-',
    '"d":{"state":"settled","thread":"","connection":{"family":"ISO 8434-3","size":"-"},"ask":{"reading":"","why":"","gainBits":',
    '["edge-noise",0.00,["edge-bias",0.00,["focal-length",0.00,["height",0.00,["tilt",0.00,["print-scale",0.00,["card-bow",0.00,["thread-form",0.00',
    '"h":"right","s":1,"e":"b":[["l":{"a":["c":["k":[],"g":[{"text":"","c":{"t":[["',
    '{"v":1,"id":"","t":[17,17],"a":"0.1.0","n":"","r":"","p":[,,],"f":2,"s":{"k":"card","q":[,],"d":"dark","o":[""],"b":[],"m":{"p":[0.00],"d":[0.0],"c":0.,"t":[0.00],"f":[60.',
  ].join(''),
);

export type CodeRefusal = 'not-ours' | 'newer-version' | 'damaged-code';

/** The richest code that still survives a messenger. */
export function encodePictureCode(
  sheet: Sheet,
  photo: PhotoInPicture,
): Result<string, 'too-large'> {
  for (const detail of details) {
    const json = strToU8(JSON.stringify(foldSheet(sheet, photo, detail)));
    const text = mark + toBase45(deflateSync(json, { level: 9, dictionary }));
    if (text.length <= maxCharacters) return ok(text);
  }
  return refuse('too-large', 'This sheet holds too much for a picture: hand over the sheet file.');
}

export function decodePictureCode(text: string): Result<Coded, CodeRefusal> {
  if (!text.startsWith(mark))
    return refuse('not-ours', 'The code on this picture is not from Crestwise.');
  let raw: unknown;
  try {
    const packed = fromBase45(text.slice(mark.length));
    if (!packed || packed.length > 4000) return damaged();
    const json = inflateSync(packed, { dictionary });
    if (json.length > maxJsonBytes) return damaged();
    raw = JSON.parse(strFromU8(json));
  } catch {
    return damaged();
  }
  const newer = z.object({ v: z.number().gt(1) }).safeParse(raw);
  if (newer.success)
    return refuse(
      'newer-version',
      'This picture was made by a newer Crestwise: reload the page while online to update.',
    );
  const coded = codedSchema.safeParse(raw);
  return coded.success ? ok(coded.data) : damaged();
}

/** The sheet that a decoded code stands for, with the photo part as it arrived. */
export function sheetFromCode(
  coded: Coded,
  arrived: { widthPx: number; heightPx: number },
): Result<Sheet, CodeRefusal> {
  const sheet = readSheet(unfoldSheet(coded, arrived));
  return sheet.ok ? sheet : damaged();
}

const damaged = () =>
  refuse(
    'damaged-code',
    'The code on this picture cannot be read: ask for the sheet file instead.',
  );
