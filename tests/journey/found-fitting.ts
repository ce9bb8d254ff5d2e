import { loadNodeVision } from '../../src/cli/node-vision';
import { findReference } from '../../src/journey/2-reference/find-reference';
import type { Reference } from '../../src/journey/2-reference/reference';
import { type FoundFitting, findFitting } from '../../src/journey/3-find/find-fitting';
import { defaultOptions } from '../../src/journey/identification';
import type { GreyImage } from '../../src/vision/grey-image';
import { accepted, fixture } from './1-photo/read-files';

/** A photo of fixtures/ whose reference and fitting are found; `uPrint` of the card's print. */
export async function foundFitting(
  name: string,
  uPrint = 1e-6,
): Promise<{
  readonly grey: GreyImage;
  readonly reference: Reference;
  readonly fitting: FoundFitting;
}> {
  const vision = await loadNodeVision();
  const photo = await accepted(fixture(name));
  const scale = { x: 1, y: 1, u: uPrint };
  const reference = findReference(photo, vision, scale, defaultOptions.reference);
  if (!reference.ok) throw new Error(reference.reason);
  const fitting = findFitting(photo.grey, reference.value, vision);
  if (!fitting.ok) throw new Error(fitting.reason);
  return { grey: photo.grey, reference: reference.value, fitting: fitting.value };
}
