/** Stops at a bug: a state that no input can bring about. Never used for input. */
export function assert(condition: unknown, message: string): asserts condition {
  if (!condition) throw new Error(`bug: ${message}`);
}

/** Makes the compiler prove that every case of a union was handled. */
export function unreachable(value: never): never {
  throw new Error(`bug: unhandled case ${JSON.stringify(value)}`);
}
