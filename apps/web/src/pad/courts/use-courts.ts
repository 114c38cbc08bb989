import type { Outbox } from "@courtloom/sync";
import { useEffect, useState } from "react";
import type { SeatChoice } from "../shown-ends.ts";
import { type ChartedCourt, findCourt } from "./find-court.ts";
import { type KeptCourts, keepCourts, readCourts } from "./kept-courts.ts";

/** The courts of one phone: the first, and for staff one more. Never more than two. SPEC PD74. */
export interface Courts {
  readonly second: ChartedCourt | undefined;
  /** Whether the second is on the screen. */
  readonly isSecondInFront: boolean;
  /** `false` when neither this phone nor the server knew the match. */
  readonly add: (matchId: string) => Promise<boolean>;
  readonly close: () => void;
  readonly change: () => void;
  /** Where the person sits at a court; `undefined` where only one is charted. */
  readonly seatAt: (matchId: string) => SeatChoice | undefined;
  readonly sit: (matchId: string, seat: SeatChoice) => void;
}

const otherOf = ({ matchIds }: KeptCourts, matchId: string): string | undefined => {
  const [a, b] = matchIds;
  if (matchId === a) return b;
  return matchId === b ? a : undefined;
};

/** Opens again the two courts of which `first` is one, and remembers what changes about them. */
export const useCourts = (first: ChartedCourt, outbox: Outbox, usualSeat: SeatChoice): Courts => {
  const firstId = first.match.matchId;
  const { staff } = first.courtside;
  const [kept, setKept] = useState<KeptCourts>();
  const [second, setSecond] = useState<ChartedCourt>();
  const become = (next: KeptCourts | undefined): void => {
    setKept(next);
    keepCourts(next);
  };
  useEffect(() => {
    let isWanted = true;
    const reopen = async () => {
      const held = staff ? readCourts() : undefined;
      const other = held && otherOf(held, firstId);
      const found = other === undefined ? undefined : await findCourt(outbox, other);
      if (!isWanted) return;
      setKept(found && held);
      setSecond(found);
    };
    void reopen();
    return () => {
      isWanted = false;
    };
  }, [firstId, staff, outbox]);

  return {
    second,
    isSecondInFront: kept !== undefined && second !== undefined && kept.front !== firstId,
    add: async (matchId) => {
      const found = await findCourt(outbox, matchId);
      if (!found) return false;
      const seats = { [firstId]: usualSeat, [matchId]: usualSeat };
      become({ matchIds: [firstId, matchId], front: matchId, seats });
      setSecond(found);
      return true;
    },
    close: () => {
      become(undefined);
      setSecond(undefined);
    },
    change: () => {
      const other = kept && otherOf(kept, kept.front);
      if (kept && other !== undefined) become({ ...kept, front: other });
    },
    seatAt: (matchId) => kept?.seats[matchId],
    sit: (matchId, seat) => {
      if (kept && kept.seats[matchId] !== seat)
        become({ ...kept, seats: { ...kept.seats, [matchId]: seat } });
    },
  };
};
