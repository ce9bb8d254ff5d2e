import type { GreyImage } from '../../vision/grey-image';
import type { Size } from './photo';

/** TurboJPEG's C interface, libjpeg-turbo 2, as the wasm of @cwasm/jpeg-turbo exports it. */
interface TurboJpeg {
  readonly memory: WebAssembly.Memory;
  malloc(size: number): number;
  free(pointer: number): void;
  tjInitDecompress(): number;
  tjDestroy(handle: number): number;
  tjDecompress2(
    handle: number,
    source: number,
    sourceSize: number,
    target: number,
    width: number,
    pitch: number,
    height: number,
    pixelFormat: number,
    flags: number,
  ): number;
}

const grey = 6; // TJPF_GRAY: the file's luma plane as it is; chroma is never transformed

/** Instances that are fit for another photo, by their compiled code. */
const spare = new WeakMap<WebAssembly.Module, TurboJpeg>();

/** An instance that has grown beyond this is not kept: a 12 MP photo needs 50 MB. */
const keptBytes = 128 * 2 ** 20;

/** Decodes at `size`, which is the file's own or half of it (rounded up).
 *  Null when the file is damaged, if only at its end: libjpeg fills what is missing with grey and
 *  shifts what comes after a flipped bit, and a measurement must not rest on either. */
export function decodeJpeg(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  size: Size,
): GreyImage | null {
  const turbo = spare.get(module) ?? instantiate(module);
  // Kept only after a good end: a fatal error leaves libjpeg's state and memory as they were then.
  spare.delete(module);
  try {
    const image = decode(turbo, bytes, size);
    if (image && turbo.memory.buffer.byteLength <= keptBytes) spare.set(module, turbo);
    return image;
  } catch {
    return null;
  }
}

function instantiate(module: WebAssembly.Module): TurboJpeg {
  return new WebAssembly.Instance(module, imports).exports as unknown as TurboJpeg;
}

function decode(turbo: TurboJpeg, bytes: Uint8Array, { width, height }: Size): GreyImage | null {
  const source = turbo.malloc(bytes.length);
  const target = turbo.malloc(width * height);
  if (source === 0 || target === 0) return null;
  new Uint8Array(turbo.memory.buffer).set(bytes, source);
  const handle = turbo.tjInitDecompress();
  const status = turbo.tjDecompress2(
    handle,
    source,
    bytes.length,
    target,
    width,
    width,
    height,
    grey,
    0,
  );
  if (status !== 0) return null;
  const data = new Uint8Array(turbo.memory.buffer, target, width * height).slice();
  turbo.tjDestroy(handle);
  turbo.free(target);
  turbo.free(source);
  return { width, height, data };
}

function leave(): never {
  throw new Error('libjpeg gave up');
}

const imports: WebAssembly.Imports = {
  // libjpeg's fatal errors jump out of the decoder: here they leave the instance for good.
  env: { setjmp: () => 0, longjmp: leave },
  wasi_snapshot_preview1: {
    environ_sizes_get: () => 0,
    environ_get: leave,
    proc_exit: leave,
    fd_close: leave,
    fd_seek: leave,
    fd_write: leave,
  },
};
