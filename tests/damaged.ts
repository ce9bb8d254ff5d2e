import fc from 'fast-check';

/** Copies of a file with up to twenty bytes changed. */
export const damaged = (file: Uint8Array): fc.Arbitrary<Uint8Array> =>
  fc
    .array(fc.tuple(fc.nat({ max: file.length - 1 }), fc.nat({ max: 255 })), {
      minLength: 1,
      maxLength: 20,
    })
    .map((flips) => {
      const copy = file.slice();
      for (const [at, value] of flips) copy[at] = value;
      return copy;
    });
