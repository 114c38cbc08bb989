/** For a start with a local authority: what a phone does once, before its first code. */
export function TrustHint({ page }: { readonly page: string }) {
  return (
    <p>
      A phone that does not trust this machine yet begins at <b>{page}</b>, once, before it opens a code.
    </p>
  );
}
