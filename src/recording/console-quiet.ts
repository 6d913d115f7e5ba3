/**
 * Runs a synchronous call while `console.error` is silent. The WebAssembly decoders print each damaged
 * packet and also return it; we report what they return, and our diagnostics stay ours.
 */
export function quietly<T>(call: () => T): T {
  const print = console.error;
  console.error = () => {};
  try {
    return call();
  } finally {
    console.error = print;
  }
}
