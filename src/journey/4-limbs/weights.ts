import trained from './weights.json';

/** Weights as fixtures/training writes them: per tensor a scale and 16-bit numbers. */
export type Tensors = readonly { readonly scale: number; readonly values: string }[];

export const weightsOf = (name: 'limb' | 'close' | 'hex' | 'turn' | 'face'): Float32Array =>
  weightsIn(trained[name]);

export function weightsIn(tensors: Tensors): Float32Array {
  const parts = tensors.map(({ scale, values }) => {
    const bytes = Uint8Array.from(atob(values), (c) => c.charCodeAt(0));
    const view = new DataView(bytes.buffer);
    return Float32Array.from(
      { length: bytes.length / 2 },
      (_, i) => scale * view.getInt16(2 * i, true),
    );
  });
  const all = new Float32Array(parts.reduce((n, p) => n + p.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
