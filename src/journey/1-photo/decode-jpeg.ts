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

/** Decodes at `size`, which is the file's own or half of it (rounded up).
 *  A fresh instance for each file: after a fatal error libjpeg's state is lost, and a photo that
 *  needed much memory would otherwise keep it. Null when the file is damaged, if only at its end:
 *  libjpeg fills what is missing with grey and shifts what comes after a flipped bit, and a
 *  measurement must not rest on either. */
export function decodeJpeg(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  { width, height }: Size,
): GreyImage | null {
  try {
    const turbo = new WebAssembly.Instance(module, imports).exports as unknown as TurboJpeg;
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
    return {
      width,
      height,
      data: new Uint8Array(turbo.memory.buffer).slice(target, target + width * height),
    };
  } catch {
    return null;
  }
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
