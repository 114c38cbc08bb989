import type { DeviceLink } from "./device-link.ts";
import type { LinkFaults } from "./link.ts";
import type { Phone } from "./phone.ts";
import type { FaultKind, PlannedFault } from "./plan.ts";
import type { World } from "./world.ts";

/** Begins a fault; what it returns ends it. Undefined: there is nothing to end. */
type Strike = (world: World, fault: PlannedFault) => (() => void) | undefined;

const targetOf = <T>(items: readonly T[], target: number): T => {
  const item = items[Math.floor(target * items.length)];
  if (item === undefined) throw new Error("nobody of that kind takes part");
  return item;
};

const allViewers = (world: World) => [...world.courtViewers, ...world.boardViewers, ...world.alertViewers];
const allDevices = (world: World) => [...world.phones, ...allViewers(world)];
const linkOf = (world: World, { target }: PlannedFault): DeviceLink =>
  targetOf(allDevices(world), target).link;

/** A flag of one link, set until the fault ends. */
const flagged =
  (flag: Exclude<keyof LinkFaults, "stalledUntilMs">): Strike =>
  (world, fault) => {
    const { faults } = linkOf(world, fault);
    faults[flag] = true;
    return () => {
      faults[flag] = false;
    };
  };

/** Ids that are on the server's disk or on a phone's. */
const everywhere = async ({ database, phones }: World): Promise<ReadonlySet<string>> => {
  const held = await Promise.all(phones.map(({ disk }) => disk.entries()));
  return new Set([...(await database.entryIds()), ...held.flat().map(({ id }) => id)]);
};

/** Destroys copies; a promise whose last copy went this way is nobody's fault. */
const destroying = async (world: World, destroy: () => Promise<void> | void): Promise<void> => {
  const before = await everywhere(world);
  await destroy();
  const after = await everywhere(world);
  for (const id of before) if (!after.has(id)) world.ledger.forgive(id);
};

const phoneDies =
  (wipes: boolean): Strike =>
  (world, { target }) => {
    const phone = targetOf(world.phones, target);
    phone.die();
    if (wipes) void destroying(world, phone.disk.wipe);
    return phone.start;
  };

/** The phones that could lead in place of another: they run, and know who leads. */
const waitingPhones = ({ phones }: World): readonly Phone[] =>
  phones.filter((phone) => phone.lanes()[0]?.status().leader !== undefined);

const takesOver = (world: World, { target }: PlannedFault): Phone | undefined => {
  const waiting = waitingPhones(world);
  return waiting.length === 0 ? undefined : targetOf(waiting, target);
};

const noSignal = (link: DeviceLink): (() => void) => {
  link.faults.isCut = true;
  link.cut();
  return () => {
    link.faults.isCut = false;
  };
};

const STRIKES: Readonly<Record<FaultKind, Strike>> = {
  "server ends": ({ nodes }, { target }) => {
    const node = targetOf(nodes, target);
    node.crash();
    return node.start;
  },
  "server ends at a step": ({ nodes, time }, { target, amount, forMs }) => {
    const node = targetOf(nodes, target);
    const life = node.life();
    node.onCrash(() => {
      if (node.life() === life) time.after(forMs, node.start);
    });
    node.crashAtStep(amount);
    return undefined;
  },
  "database away": ({ database }) => {
    void database.crash();
    return database.recover;
  },
  "database ends between commit and answer": ({ database }) => {
    database.crashAfterCommit();
    return database.recover;
  },
  "hints lost": ({ database }) => {
    database.loseHints(true);
    return () => database.loseHints(false);
  },
  "connection cut": (world, fault) => {
    linkOf(world, fault).cut();
    return undefined;
  },
  "no signal": (world, fault) => noSignal(linkOf(world, fault)),
  "half-open": (world, fault) => {
    const link = linkOf(world, fault);
    link.faults.swallows = true;
    // When something gets through again, the way has long forgotten the connection.
    return () => {
      link.faults.swallows = false;
      link.cut();
    };
  },
  stall: (world, fault) => {
    linkOf(world, fault).faults.stalledUntilMs = world.time.nowMs() + fault.forMs;
    return undefined;
  },
  "messages twice": flagged("duplicates"),
  "messages out of order": flagged("reorders"),
  "answers lost": flagged("losesAnswers"),
  "batches cut short": (world, { target }) => {
    const { faults } = targetOf(world.phones, target).link;
    faults.truncates = true;
    return () => {
      faults.truncates = false;
    };
  },
  "phone's storage is full": ({ phones }, { target }) => {
    const { disk } = targetOf(phones, target);
    disk.fill(true);
    return () => disk.fill(false);
  },
  "a person takes over": (world, fault) => {
    takesOver(world, fault)?.takeOver();
    return undefined;
  },
  "a person takes over while the lead has no signal": (world, fault) => {
    const taker = takesOver(world, fault);
    const lead = world.phones.find((phone) => phone.matchId === taker?.matchId && phone.leads());
    if (!taker || !lead) return undefined;
    const signalReturns = noSignal(lead.link);
    taker.takeOver();
    return signalReturns;
  },
  "slow viewer": (world, { target }) => {
    const { link } = targetOf(allViewers(world), target);
    link.faults.isSlow = true;
    return () => {
      link.faults.isSlow = false;
      link.catchUp();
    };
  },
  "wall clock jumps": (world, { target, amount }) => {
    targetOf([...world.nodes, ...allDevices(world)], target).jumpClock(amount);
    return undefined;
  },
  "phone dies": phoneDies(false),
  "phone dies, storage lost": phoneDies(true),
  "older backup restored": (world, { amount }) => {
    void destroying(world, () => world.database.restore(amount));
    return undefined;
  },
  "desk corrects": (world, { target, amount }) => {
    void world.desk.correct(targetOf(world.phones, target).matchId, amount);
    return undefined;
  },
};

/** Begins one fault of the plan now, and ends it when its time is over; `heal` in `ends` ends it early. */
export const strike = (world: World, fault: PlannedFault, ends: Set<() => void>): void => {
  world.trace.say("plan", `${fault.kind} (${fault.target.toFixed(3)}, ${fault.amount}, ${fault.forMs})`);
  const end = STRIKES[fault.kind](world, fault);
  if (end === undefined) return;
  ends.add(end);
  world.time.after(fault.forMs, () => {
    if (ends.delete(end)) end();
  });
};
