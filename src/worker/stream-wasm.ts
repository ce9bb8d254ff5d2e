/** Fetches and compiles at the same time. */
export async function streamWasm(url: string): Promise<WebAssembly.Module> {
  const response = await fetch(url, { credentials: 'same-origin' });
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  // A server that does not label the file application/wasm forbids streaming, nothing else.
  if (response.headers.get('content-type') === 'application/wasm') {
    return WebAssembly.compileStreaming(response);
  }
  return WebAssembly.compile(await response.arrayBuffer());
}
