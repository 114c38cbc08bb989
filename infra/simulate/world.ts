import { createDatabase, type Database } from "./database.ts";
import type { Defect } from "./defect.ts";
import { createDesk, type Desk } from "./desk.ts";
import { createDeviceLink, type DeviceLink } from "./device-link.ts";
import { createLedger, type Ledger } from "./ledger.ts";
import { type Person, sampleWatch } from "./live-core.ts";
import { createPhone, type Phone } from "./phone.ts";
import type { Cast, Plan } from "./plan.ts";
import { createServerNode, type ServerNode } from "./server-node.ts";
import { createStream } from "./stream.ts";
import type { Trace } from "./trace.ts";
import type { Verdict } from "./verdict.ts";
import {
  type AlertViewer,
  type BoardViewer,
  type CourtViewer,
  createAlertViewer,
  createBoardViewer,
  createCourtViewer,
} from "./viewers.ts";
import { createVirtualDisk } from "./virtual-disk.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** Everybody and everything that takes part in one schedule. */
export interface World {
  readonly time: VirtualTime;
  readonly trace: Trace;
  readonly ledger: Ledger;
  readonly verdict: Verdict;
  readonly database: Database;
  readonly nodes: readonly ServerNode[];
  readonly phones: readonly Phone[];
  readonly courtViewers: readonly CourtViewer[];
  readonly boardViewers: readonly BoardViewer[];
  readonly alertViewers: readonly AlertViewer[];
  readonly desk: Desk;
}

export interface WorldOptions {
  readonly plan: Plan;
  readonly time: VirtualTime;
  readonly trace: Trace;
  readonly verdict: Verdict;
  readonly defect: Defect | undefined;
}

/** Raised by the fourth point that is drawn, unless some of them are taken out. */
const WATCH = sampleWatch({ rate: "lineShare" });

const COURT_CODES: Readonly<Record<string, Person>> = { m1: "helper", m2: "otherHelper" };

/** Who holds each phone: the first at a court came in by its code, the others have accounts. */
const holdersOf = ({ phones }: Cast): readonly { readonly matchId: string; readonly person: Person }[] =>
  phones.map((matchId, i) => {
    const first = phones.indexOf(matchId) === i;
    return {
      matchId,
      person: (first ? COURT_CODES[matchId] : undefined) ?? (i === 1 ? "coach" : "director"),
    };
  });

export const createWorld = ({ plan, time, trace, verdict, defect }: WorldOptions): World => {
  const { seed, cast } = plan;
  const ledger = createLedger();
  const streamOf = (name: string) => createStream(seed, name);
  const database = createDatabase({ time, trace, ledger, defect });
  const nodes = Array.from({ length: cast.nodes }, (_, i): ServerNode => {
    const name = `node ${i + 1}`;
    const watches = cast.alertViewers.length > 0 ? [WATCH] : [];
    const tools = { time, stream: streamOf(name), database, trace, verdict, ledger, defect };
    return createServerNode({ name, ...tools, watches });
  });
  for (const node of nodes) node.start();
  const linkOf = (name: string, person: Person): DeviceLink =>
    createDeviceLink({ name, person, time, stream: streamOf(`${name} link`), trace, nodes });
  const phones = holdersOf(cast).map(({ matchId, person }, i): Phone => {
    const name = `phone ${i + 1}`;
    const disk = createVirtualDisk(time, streamOf(`${name} disk`));
    const link = linkOf(name, person);
    const stream = streamOf(name);
    const common = { time, trace, ledger, verdict, defect };
    return createPhone({ ...common, name, number: i + 1, chartist: person, matchId, stream, link, disk });
  });
  for (const phone of phones) phone.start();
  const viewer = (name: string, person: Person) => ({
    ...{ name, time, ledger, verdict, defect },
    link: linkOf(name, person),
  });
  return {
    ...{ time, trace, ledger, verdict, database, nodes, phones },
    courtViewers: cast.courtViewers.map((matchId, i) =>
      createCourtViewer(viewer(`court viewer ${i + 1}`, "director"), matchId),
    ),
    boardViewers: cast.boardViewers.map((view) =>
      createBoardViewer(viewer(`${view} board`, view === "wall" ? "wall" : "coach"), view),
    ),
    alertViewers: cast.alertViewers.map((person) => createAlertViewer(viewer(`alerts of ${person}`, person))),
    desk: createDesk({ time, stream: streamOf("desk"), database, trace }),
  };
};
