import { ownBuffer, type Rgba } from './decode-colour';

/** What we call of libheif's own JavaScript interface (libheif-js 1.23, emscripten). Everything it
 *  holds is gone with the instance, so that a damaged file leaves nothing behind. */
interface LibHeif {
  heif_context_alloc(): object;
  heif_context_read_from_memory(context: object, bytes: Uint8Array): { code: object };
  heif_js_context_get_primary_image_handle(context: object): object;
  heif_js_decode_image2(handle: object, space: object, chroma: object): DecodedHeif;
  readonly heif_error_code: { readonly heif_error_Ok: object };
  readonly heif_colorspace: { readonly heif_colorspace_RGB: object };
  readonly heif_chroma: { readonly heif_chroma_interleaved_RGBA: object };
}

interface DecodedHeif {
  readonly code?: object;
  readonly channels?: readonly {
    readonly width: number;
    readonly height: number;
    readonly stride: number;
    readonly data: Uint8Array;
  }[];
}

type Factory = (options: {
  instantiateWasm(
    imports: WebAssembly.Imports,
    receive: (instance: WebAssembly.Instance) => void,
  ): WebAssembly.Exports;
  print(text: string): void;
  printErr(text: string): void;
}) => LibHeif;

/** The primary image in colour, turned as its container asks. `take` reads from the decoder's own
 *  memory, which ends with this call: a colour copy of a 12 MP photo would be another 48 MB. Null when
 *  the file is damaged. */
export async function decodeHeic<T>(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  take: (image: Rgba) => T,
): Promise<T | null> {
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
    const context = lib.heif_context_alloc();
    const read = lib.heif_context_read_from_memory(context, bytes);
    if (read.code !== lib.heif_error_code.heif_error_Ok) return null;
    const handle = lib.heif_js_context_get_primary_image_handle(context);
    const { channels, code } = lib.heif_js_decode_image2(
      handle,
      lib.heif_colorspace.heif_colorspace_RGB,
      lib.heif_chroma.heif_chroma_interleaved_RGBA,
    );
    const channel = channels?.[0];
    return code || !channel ? null : take(rowsTogether(channel));
  } catch {
    return null;
  }
}

function rowsTogether(channel: NonNullable<DecodedHeif['channels']>[number]): Rgba {
  const { width, height, stride, data } = channel;
  if (stride === 4 * width) return { width, height, data };
  const packed = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y++)
    packed.set(data.subarray(y * stride, y * stride + 4 * width), 4 * width * y);
  return { width, height, data: packed };
}

/** AVIF in colour, as stored: its turns are the reader's. Null when the file is damaged. */
export async function decodeAvif<T>(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  take: (image: Rgba) => T,
): Promise<T | null> {
  const { default: decode, init } = await import('@jsquash/avif/decode.js');
  try {
    // The package's types leave out the compiled module that it takes first.
    await (init as (module: unknown) => Promise<void>)(module);
    const image = await decode(ownBuffer(bytes));
    return image && take(image);
  } catch {
    return null;
  }
}
