import type { Plugin } from 'vite';

/** No code but our own files and WebAssembly, no style but our own files, no address but our own.
 *  Pictures may also be made in the page (blob:). */
const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Puts the Content Security Policy into the built page; the development server needs inline code. */
export function securityPolicyPlugin(): Plugin {
  return {
    name: 'crestwise-security-policy',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
          injectTo: 'head-prepend',
        },
      ],
    },
  };
}
