import bytes, { type DeflatingCode } from './deflating.wasm';

type Code = DeflatingCode & { readonly memory: { readonly buffer: ArrayBuffer } };

let code: Code | undefined;

/** The compiled code with its memory: one for all, as it keeps nothing from one call to the next. */
export function deflatingCode(): Code {
  code ??= new WebAssembly.Instance(new WebAssembly.Module(bytes), {}).exports as Code;
  return code;
}

/** Compressed as PDF's `FlateDecode` reads it; the same bytes anywhere. */
export function deflated(content: Uint8Array): Uint8Array {
  const { inputAt, deflate, outputAt, memory } = deflatingCode();
  const at = inputAt(content.length);
  // Asked for only now: where the memory has grown, what was seen of it is gone.
  new Uint8Array(memory.buffer, at, content.length).set(content);
  const length = deflate(content.length);
  return new Uint8Array(memory.buffer, outputAt(), length).slice();
}
