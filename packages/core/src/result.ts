/** Outcome of something that may fail for a reason the caller must handle. Levels 0 to 4 never throw for input. */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const err = <E>(error: E): { readonly ok: false; readonly error: E } => ({
  ok: false,
  error,
});
