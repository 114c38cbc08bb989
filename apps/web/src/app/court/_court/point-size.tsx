import { pointSizeNow } from "@courtloom/decisions";
import type { MatchView } from "@courtloom/match-log";
import { useMemo } from "react";
import { sayPointSize } from "./say-point-size.ts";

/** Says when the point to be played is one of the big ones. For staff: this page is theirs alone. */
export function PointSize({ view }: { readonly view: MatchView }) {
  const words = useMemo(
    () => (view.points.length === 0 ? undefined : sayPointSize(pointSizeNow(view))),
    [view],
  );
  return words === undefined ? null : <p data-testid="point-size">{words}</p>;
}
