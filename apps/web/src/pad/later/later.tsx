import { type ReactNode, useCallback, useEffect, useState } from "react";
import { PartMissing } from "./part-missing.tsx";
import type { PartSource } from "./part-source.ts";

interface LaterProps<Props> {
  readonly part: PartSource<Props>;
  readonly props: Props;
}

/** A part that comes when it is opened; where it cannot, that is said and may be tried again. SPEC PD91. */
export const Later = <Props extends { readonly onClose: () => void }>({
  part,
  props,
}: LaterProps<Props>): ReactNode => {
  const [isMissing, setMissing] = useState(false);
  const [, setHere] = useState(false);
  const look = useCallback(() => {
    setMissing(false);
    void part.fetchNow().then((isHere) => (isHere ? setHere(true) : setMissing(true)));
  }, [part]);
  useEffect(look, [look]);
  const Part = part.get();
  if (Part) return <Part {...props} />;
  return isMissing ? <PartMissing onAgain={look} onClose={props.onClose} /> : null;
};
