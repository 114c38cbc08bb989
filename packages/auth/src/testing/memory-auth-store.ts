import type {
  AuthStore,
  CodeRow,
  FoundCode,
  FoundCourtside,
  FoundHandOver,
  LeadHolder,
  LeadLaneRef,
  ListedCourtside,
  Membership,
  NewCourtside,
  NewHandOver,
} from "../auth-store.ts";

/** What a memory store is asked to hold from elsewhere: academies and who belongs to them. */
export interface MemoryMember extends Membership {
  readonly userId: string;
  readonly isDemo: boolean;
}

/** The lane that leads a match, and whose it is. */
export interface MemoryLead extends LeadLaneRef {
  readonly owner: LeadHolder;
  readonly chartist: string;
}

export interface MemoryAuthStore extends AuthStore {
  /** Another lane leads from now on. */
  readonly setLead: (lead: MemoryLead) => void;
  readonly addMember: (member: MemoryMember) => void;
  /** All that it holds of codes and sessions. */
  readonly everything: () => unknown;
}

interface HandOver extends NewHandOver, Pick<FoundHandOver, "chartist" | "withdrawnMs" | "granted"> {}

interface Session extends NewCourtside {
  readonly revokedMs: number | null;
}

interface Window {
  readonly count: number;
  readonly resetMs: number;
}

const isUsable = (found: FoundCode, nowMs: number): boolean =>
  found.revokedMs === null && found.expiresMs > nowMs;

const bare = ({ academyId, codeId, kind, dayId, courtId, expiresMs, revokedMs }: CodeRow): FoundCode => ({
  academyId,
  codeId,
  kind,
  dayId,
  courtId,
  expiresMs,
  revokedMs,
});

const makeTries = (): Pick<AuthStore, "takeTry" | "returnTry" | "clearTries"> => {
  const windows = new Map<string, Window>();
  return {
    takeTry: async (key, windowMs, nowMs) => {
      const before = windows.get(key);
      const isOpen = before !== undefined && before.resetMs > nowMs;
      const now = isOpen
        ? { count: before.count + 1, resetMs: before.resetMs }
        : { count: 1, resetMs: nowMs + windowMs };
      windows.set(key, now);
      return now;
    },
    returnTry: async (key) => {
      const before = windows.get(key);
      if (before) windows.set(key, { ...before, count: Math.max(0, before.count - 1) });
    },
    clearTries: async (key) => {
      windows.delete(key);
    },
  };
};

const makeMembers = () => {
  const members: MemoryMember[] = [];
  const bySeniority = (a: MemoryMember, b: MemoryMember): number =>
    Number(a.isDemo) - Number(b.isDemo) || a.academyId.localeCompare(b.academyId);
  const store: Pick<MemoryAuthStore, "addMember" | "membershipOf" | "demoDirector" | "hasDirector"> = {
    addMember: (member) => {
      members.push(member);
    },
    membershipOf: async (userId) => {
      const found = members.filter((member) => member.userId === userId).sort(bySeniority)[0];
      if (!found) return undefined;
      const { academyId, memberId, name, role } = found;
      return { academyId, memberId, name, role };
    },
    demoDirector: async () => {
      const found = members.find((member) => member.isDemo && member.role === "director");
      return found && { academyId: found.academyId, userId: found.userId };
    },
    hasDirector: async () => members.some((member) => !member.isDemo),
  };
  return store;
};

const makeCodes = (
  codes: CodeRow[],
): Pick<AuthStore, "addCode" | "activeCodes" | "revokeCode" | "findCode"> => ({
  addCode: async (code) => {
    if (codes.some((other) => other.codeHash === code.codeHash)) return false;
    codes.push(code);
    return true;
  },
  activeCodes: async ({ academyId, dayId, nowMs }) =>
    codes.filter((code) => code.academyId === academyId && code.dayId === dayId && isUsable(code, nowMs)),
  revokeCode: async ({ academyId, codeId, atMs }) => {
    const at = codes.findIndex((code) => code.academyId === academyId && code.codeId === codeId);
    const code = codes[at];
    if (!code) return false;
    codes[at] = { ...code, revokedMs: code.revokedMs ?? atMs };
    return true;
  },
  findCode: async (codeHash) => {
    const found = codes.find((code) => code.codeHash === codeHash);
    return found && bare(found);
  },
});

const makeSessions = (
  codes: readonly CodeRow[],
  sessions: Session[],
): Pick<AuthStore, "openCourtside" | "findCourtside" | "activeCourtside" | "revokeCourtside"> => {
  const join = (session: Session): ListedCourtside => {
    const code = codes.find(
      ({ academyId, codeId }) => academyId === session.academyId && codeId === session.codeId,
    );
    if (!code) throw new Error("a session needs its code");
    return {
      ...bare(code),
      sessionId: session.sessionId,
      name: session.name,
      openedMs: session.openedMs,
      expiresMs: Math.min(session.expiresMs, code.expiresMs),
      revokedMs: session.revokedMs ?? code.revokedMs,
    };
  };
  return {
    openCourtside: async (session) => {
      sessions.push({ ...session, revokedMs: null });
    },
    findCourtside: async (tokenHash): Promise<FoundCourtside | undefined> => {
      const session = sessions.find((other) => other.tokenHash === tokenHash);
      if (!session) return undefined;
      const { openedMs: _, ...found } = join(session);
      return found;
    },
    activeCourtside: async ({ academyId, dayId, nowMs }) =>
      sessions
        .map(join)
        .filter((found) => found.academyId === academyId && found.dayId === dayId && isUsable(found, nowMs)),
    revokeCourtside: async ({ academyId, sessionId, atMs }) => {
      const at = sessions.findIndex(
        (session) => session.academyId === academyId && session.sessionId === sessionId,
      );
      const session = sessions[at];
      if (!session) return false;
      sessions[at] = { ...session, revokedMs: session.revokedMs ?? atMs };
      return true;
    },
  };
};

const isSameMatch = (one: LeadLaneRef, other: LeadLaneRef): boolean =>
  one.academyId === other.academyId && one.matchId === other.matchId;

const isSameLane = (one: LeadLaneRef, other: LeadLaneRef): boolean =>
  isSameMatch(one, other) && one.laneId === other.laneId;

const isOwner = (had: LeadHolder, asks: LeadHolder): boolean =>
  had.kind === asks.kind && (had.kind === "courtside" || had.id === asks.id);

const makeHandOvers = (
  codes: readonly CodeRow[],
  handOvers: HandOver[],
  leads: MemoryLead[],
  openCourtside: AuthStore["openCourtside"],
): Pick<
  MemoryAuthStore,
  "setLead" | "addHandOver" | "findHandOver" | "acceptHandOver" | "withdrawHandOvers"
> => {
  const leadOf = (lane: LeadLaneRef) => leads.findLast((lead) => isSameMatch(lead, lane));
  const change = (wanted: (made: HandOver) => boolean, into: Partial<HandOver>): number => {
    let count = 0;
    for (const [at, made] of handOvers.entries()) {
      if (!wanted(made)) continue;
      handOvers[at] = { ...made, ...into };
      count += 1;
    }
    return count;
  };
  return {
    setLead: (lead) => void leads.push(lead),
    addHandOver: async (made) => {
      if (handOvers.some(({ codeHash }) => codeHash === made.codeHash)) return "hash_taken";
      const lead = leadOf(made);
      if (lead?.laneId !== made.laneId || !isOwner(lead.owner, made.owner)) return "not_lead";
      change((other) => other.withdrawnMs === null && isSameLane(other, made), { withdrawnMs: made.madeMs });
      handOvers.push({ ...made, chartist: lead.chartist, withdrawnMs: null, granted: null });
      return "added";
    },
    findHandOver: async (codeHash) => {
      const made = handOvers.find((other) => other.codeHash === codeHash);
      const code = made && codes.find(({ codeId }) => codeId === made.codeId);
      if (!made || !code) return undefined;
      const { handOverId, matchId, laneId, chartist, level, endsMs, withdrawnMs, granted } = made;
      const leads = leadOf(made)?.laneId === laneId;
      const rest = { handOverId, matchId, laneId, chartist, level, leads, endsMs, withdrawnMs, granted };
      return { ...bare(code), ...rest };
    },
    acceptHandOver: async ({ academyId, handOverId, to, atMs, untilMs, session }) => {
      const isOpen = (made: HandOver): boolean =>
        made.academyId === academyId &&
        made.handOverId === handOverId &&
        made.granted === null &&
        made.withdrawnMs === null &&
        made.endsMs > atMs &&
        leadOf(made)?.laneId === made.laneId;
      if (change(isOpen, { granted: { ...to, untilMs } }) === 0) return false;
      if (session) await openCourtside(session);
      return true;
    },
    withdrawHandOvers: async ({ owner, atMs, ...lane }) => {
      const lead = leads.find((other) => isSameLane(other, lane));
      if (!lead || !isOwner(lead.owner, owner)) return false;
      return change((made) => isSameLane(made, lane) && made.withdrawnMs === null, { withdrawnMs: atMs }) > 0;
    },
  };
};

/** The store in memory, for tests of what stands on it. Behaves like the one on disk: one suite checks both. */
export const createMemoryAuthStore = (): MemoryAuthStore => {
  const codes: CodeRow[] = [];
  const sessions: Session[] = [];
  const handOvers: HandOver[] = [];
  const courtside = makeSessions(codes, sessions);
  return {
    ...makeMembers(),
    ...makeCodes(codes),
    ...courtside,
    ...makeHandOvers(codes, handOvers, [], courtside.openCourtside),
    ...makeTries(),
    everything: () => ({ codes, sessions, handOvers }),
  };
};
