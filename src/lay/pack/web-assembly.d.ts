/** As much of the standard's interface as is used here; Node's types leave it out. */
declare namespace WebAssembly {
  class Module {
    constructor(bytes: Uint8Array<ArrayBuffer>);
  }
  class Instance {
    constructor(module: Module, imports: Record<string, Record<string, (...args: number[]) => unknown>>);
    readonly exports: unknown;
  }
}
