/* The sums that a photo's time goes into, four at once: fixed-width SIMD, so that every engine rounds alike.
   src/quantity/convolution.ts calls it, and has the same sums in plain TypeScript. README.md says how it is compiled. */

#include <wasm_simd128.h>

struct Shape {
  int channels, outputs; /* planes read, and made */
  int rows, columns;     /* of each plane made; at least one vector of columns */
  int tall, broad;       /* the kernel, and how far apart its rows lie */
  int dilation;
  float floor;           /* what sums are raised to */
};

enum { lanes = 4, abreast = 4 };

static inline int lesser(int a, int b) { return a < b ? a : b; }

/* Four outputs by `vectors` vectors of columns at a time, each summed in the order of its taps, from its bias on. At
   the far ends what has been made already is made once more. */
static inline __attribute__((always_inline)) void sums(const struct Shape *shape, const float *planes,
                                                       const float *weights, const float *bias, float *out,
                                                       const int vectors) {
  const struct Shape s = *shape;
  const int width = s.columns + s.broad - 1;
  const int height = s.rows + (s.tall - 1) * s.dilation;
  const int taps = s.channels * s.tall * s.broad;
  const v128_t floor = wasm_f32x4_splat(s.floor);
  for (int first = 0; first < s.outputs; first += abreast) {
    int output[abreast];
    for (int o = 0; o < abreast; o++) output[o] = lesser(first + o, s.outputs - 1);
    for (int y = 0; y < s.rows; y++)
      for (int next = 0; next < s.columns; next += lanes * vectors) {
        const int x = lesser(next, s.columns - lanes * vectors);
        v128_t sum[abreast][vectors];
        for (int o = 0; o < abreast; o++)
          for (int v = 0; v < vectors; v++) sum[o][v] = wasm_v128_load32_splat(bias + output[o]);
        int tap = 0;
        for (int c = 0; c < s.channels; c++)
          for (int i = 0; i < s.tall; i++)
            for (int j = 0; j < s.broad; j++, tap++) {
              const float *at = planes + (c * height + y + i * s.dilation) * width + x + j;
              for (int o = 0; o < abreast; o++) {
                const v128_t weight = wasm_v128_load32_splat(weights + output[o] * taps + tap);
                for (int v = 0; v < vectors; v++)
                  sum[o][v] = wasm_f32x4_add(sum[o][v], wasm_f32x4_mul(weight, wasm_v128_load(at + lanes * v)));
              }
            }
        for (int o = 0; o < abreast; o++)
          for (int v = 0; v < vectors; v++)
            wasm_v128_store(out + (output[o] * s.rows + y) * s.columns + x + lanes * v,
                            wasm_f32x4_max(sum[o][v], floor));
      }
  }
}

__attribute__((export_name("convolve"))) void convolve(const struct Shape *shape, const float *planes,
                                                       const float *weights, const float *bias, float *out) {
  if (shape->columns < 2 * lanes)
    sums(shape, planes, weights, bias, out, 1);
  else
    sums(shape, planes, weights, bias, out, 2);
}
