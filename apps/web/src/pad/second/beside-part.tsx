import { use } from "react";
import pad from "../pad.module.css";
import type { PadSnapshot } from "../pad-session.ts";
import { BesideContext } from "./beside-context.ts";
import { LeadWishContext } from "./lead-wish-context.ts";

interface BesidePartProps {
  readonly snapshot: PadSnapshot;
  readonly onClose: () => void;
}

/** The part of the More sheet about who else charts: comparing for the lead, leading for a second. */
export const BesidePart = ({ snapshot, onClose }: BesidePartProps) => {
  const beside = use(BesideContext);
  const lead = use(LeadWishContext);
  const { second } = snapshot.status;
  const does = (action: () => void) => () => {
    onClose();
    action();
  };
  if (second)
    return (
      <section>
        <h3>You chart as second</h3>
        <p>Your points stand beside the score. They are compared, and never counted by themselves.</p>
        <button type="button" className={pad.secondary} onClick={does(lead)} data-testid="lead-this-match">
          Ask to lead this match
        </button>
      </section>
    );
  if (!beside) return null;
  const { count, open } = beside;
  return (
    <section>
      <h3>Second lanes</h3>
      <button type="button" className={pad.secondary} onClick={does(open)} data-testid="compare-lanes">
        {count === 0
          ? "Compare: nothing differs"
          : `Compare: ${count} ${count === 1 ? "point differs" : "points differ"}`}
      </button>
    </section>
  );
};
