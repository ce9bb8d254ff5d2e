/** The package's own typings are of its enums only; decode-heif.ts types what it calls. */
declare module 'libheif-js/libheif-wasm/libheif.js' {
  const make: unknown;
  export default make;
}
