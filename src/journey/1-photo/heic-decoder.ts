/** libheif's C interface, 1.23, as the emscripten build of libheif-js exports it: what can fail writes its
 *  error (code, subcode, message; four bytes each) to the first pointer. */
interface LibHeif {
  readonly HEAPU8: Uint8Array;
  _malloc(size: number): number;
  _heif_context_alloc(): number;
  _heif_context_read_from_memory_without_copy(
    error: number,
    context: number,
    bytes: number,
    size: number,
    options: number,
  ): void;
  _heif_context_get_primary_image_handle(error: number, context: number, handle: number): void;
  _heif_decode_image(
    error: number,
    handle: number,
    image: number,
    space: number,
    chroma: number,
    options: number,
  ): void;
  _heif_image_release(image: number): void;
  _heif_image_get_decoding_warnings(
    image: number,
    first: number,
    warnings: number,
    room: number,
  ): number;
  _heif_image_get_primary_width(image: number): number;
  _heif_image_get_primary_height(image: number): number;
  _heif_image_get_plane_readonly2(image: number, channel: number, stride: number): number;
  _heif_image_get_bits_per_pixel_range(image: number, channel: number): number;
  _heif_image_has_channel(image: number, channel: number): number;
  _heif_image_get_nclx_color_profile(error: number, image: number, profile: number): void;
}

type Factory = (options: {
  instantiateWasm(
    imports: WebAssembly.Imports,
    receive: (instance: WebAssembly.Instance) => void,
  ): WebAssembly.Exports;
  print(text: string): void;
  printErr(text: string): void;
}) => LibHeif;

/** Values of heif_colorspace, heif_chroma, heif_channel and heif_error_code. */
const asCoded = { space: 99, chroma: 99, channel: 0 };
const inColour = { space: 1, chroma: 11, channel: 10 };
const alphaChannel = 6;
const memoryError = 6;

/** Rows of a channel, in the decoder's own memory: the next call may move it. */
export interface HeicPlane {
  readonly width: number;
  readonly height: number;
  /** Bytes from row to row. */
  readonly stride: number;
  readonly data: Uint8Array;
}

/** Why a HEIC file gave no image. */
export type HeicFault = 'damaged' | 'no-memory';

export interface HeicDecoder {
  /** The luma as coded, where that is BT.601's of 8 bits and the whole range, as of JPEG; else null. */
  luma(): HeicPlane | null;
  /** Four bytes a pixel: R, G, B, alpha. */
  colour(): HeicPlane;
}

/** Opens the primary image and gives what `use` makes of it: turned and clipped as the container asks.
 *  Everything the decoder holds is gone with its instance, so that a damaged file leaves nothing behind. */
export async function withHeic<T>(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  use: (decoder: HeicDecoder) => T,
): Promise<T | HeicFault> {
  const { default: make } = (await import('libheif-js/libheif-wasm/libheif.js')) as {
    default: Factory;
  };
  try {
    const lib = make({
      instantiateWasm(imports, receive) {
        const instance = new WebAssembly.Instance(module, imports);
        receive(instance);
        return instance.exports;
      },
      print: () => {},
      printErr: () => {},
    });
    return use(open(lib, bytes));
  } catch (error) {
    return isOutOfMemory(error) ? 'no-memory' : 'damaged';
  }
}

/** libheif says so, or its C++ aborts where an allocation fails, or the engine refuses to grow the memory. */
function isOutOfMemory(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  return error instanceof RangeError || /^(no-memory|Aborted)/.test(error.message);
}

function open(lib: LibHeif, bytes: Uint8Array): HeicDecoder {
  const number = (at: number) =>
    new DataView(lib.HEAPU8.buffer, lib.HEAPU8.byteOffset).getInt32(at, true);
  const error = lib._malloc(12);
  const out = lib._malloc(4);
  const file = lib._malloc(bytes.length);
  if (file === 0) throw new Error('no-memory');
  const check = () => {
    const code = number(error);
    if (code !== 0) throw new Error(code === memoryError ? 'no-memory' : 'damaged');
  };
  lib.HEAPU8.set(bytes, file);
  const context = lib._heif_context_alloc();
  lib._heif_context_read_from_memory_without_copy(error, context, file, bytes.length, 0);
  check();
  lib._heif_context_get_primary_image_handle(error, context, out);
  check();
  const handle = number(out);

  function decode({ space, chroma }: typeof asCoded): number {
    lib._heif_decode_image(error, handle, out, space, chroma, 0);
    check();
    const image = number(out);
    // A tile that cannot be decoded is left out, with a warning.
    if (lib._heif_image_get_decoding_warnings(image, 0, 0, 0) > 0) throw new Error('damaged');
    return image;
  }

  function plane(image: number, channel: number): HeicPlane {
    const at = lib._heif_image_get_plane_readonly2(image, channel, out);
    const [width, height, stride] = [
      lib._heif_image_get_primary_width(image),
      lib._heif_image_get_primary_height(image),
      number(out),
    ];
    if (at === 0) throw new Error('damaged');
    return { width, height, stride, data: lib.HEAPU8.subarray(at, at + stride * height) };
  }

  /** Absent, libheif takes it for BT.601 in the whole range too. Struct heif_color_profile_nclx: version,
   *  primaries, transfer, matrix, range; matrices of ITU-T H.273: 2 unspecified, 5 and 6 BT.601. */
  function isAsInJpeg(image: number): boolean {
    if (lib._heif_image_get_bits_per_pixel_range(image, asCoded.channel) !== 8) return false;
    if (lib._heif_image_has_channel(image, alphaChannel)) return false;
    lib._heif_image_get_nclx_color_profile(error, image, out);
    if (number(error) !== 0) return true;
    const profile = number(out);
    return [2, 5, 6].includes(number(profile + 12)) && lib.HEAPU8[profile + 16] === 1;
  }

  return {
    luma() {
      const image = decode(asCoded);
      if (isAsInJpeg(image)) return plane(image, asCoded.channel);
      lib._heif_image_release(image);
      return null;
    },
    colour: () => plane(decode(inColour), inColour.channel),
  };
}
