import { HANDED_WISH_MS, handedLeadStep } from "@courtloom/sync";
import { useEffect, useState } from "react";
import type { Courtside } from "../courtside.ts";
import type { PadSession, PadSnapshot } from "../pad-session.ts";

/**
 * Asks for the lead that was handed to this person with the code they just entered. Who hands over, while that is
 * under way; afterwards undefined. SPEC PD60.
 */
export const useHandedLead = (
  session: Pick<PadSession, "takeOver">,
  { status, record }: Pick<PadSnapshot, "status" | "record">,
  handedOver: Courtside["handedOver"],
): string | undefined => {
  const [wants, setWants] = useState(handedOver?.matchId === record.matchId);
  const step = wants ? handedLeadStep(status, record) : "done";
  const { leader } = status;
  // Each word of the server about the leader is answered once.
  const answered = step === "ask" ? leader : undefined;
  useEffect(() => {
    if (answered) session.takeOver();
  }, [answered, session]);
  useEffect(() => {
    const timer = setTimeout(() => setWants(false), HANDED_WISH_MS);
    return () => clearTimeout(timer);
  }, []);
  useEffect(() => {
    if (step === "done") setWants(false);
  }, [step]);
  return step === "done" ? undefined : handedOver?.by;
};
