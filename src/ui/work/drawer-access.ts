// One chunk with everything the drawer needs (IndexedDB, zod), loaded after the first screen stands.
import { connectDrawer } from '../../drawer/drawer-connection';

export { exportDrawer, importDrawer } from '../../drawer/drawer-archive';
export {
  keepSheet,
  listDrawer,
  recallSheet,
  removeSheet,
  restoreSheet,
  sweepRemoved,
} from '../../drawer/kept-sheets';
export { makeThumbnail } from '../../drawer/thumbnail';
export { archiveFile } from '../../handover/archive';

/** The drawer of this device; opens its database on first use. */
export const drawer = connectDrawer();
