import { logError, type Runtime } from "../runtime.ts";
import type { LogStore, MatchHead } from "../store.ts";
import type { Directory } from "./directory.ts";
import type { HeardBook } from "./heard-book.ts";
import type { MatchRoom } from "./match-room.ts";

export interface HeadWatchDeps {
  readonly runtime: Runtime;
  readonly store: LogStore;
  readonly heard: HeardBook;
  readonly directory: Directory;
}

/** Keeps this node in step with what others write: the log is the bus, hints only make it quick. SPEC LV13. */
export interface HeadWatch {
  /** Reads which heads moved and brings the rooms up to them. Call it every two seconds. */
  readonly tick: () => Promise<void>;
}

/** Heard words have a way of their own to the boards; they alone make no tile. */
const withoutHeard = ({ heardMs: _, unsent: __, ...rest }: MatchHead): string => JSON.stringify(rest);

export const createHeadWatch = ({ runtime, store, heard, directory }: HeadWatchDeps): HeadWatch => {
  let since: string | undefined;
  let incarnation: string | undefined;
  let answers = true;

  /** Said once when the database goes and once when it is back, not every two seconds. */
  const told = (answered: boolean): boolean => {
    if (answered !== answers)
      runtime.log.note(answered ? "the database answers again" : "the database does not answer", {});
    answers = answered;
    return answered;
  };
  const bring = async (room: MatchRoom, head: MatchHead): Promise<void> => {
    const before = room.head();
    if (!before || withoutHeard(before) !== withoutHeard(head)) room.takeHead(head);
    if (head.pos > room.pos()) await room.catchUp();
  };
  const take = async (head: MatchHead): Promise<void> => {
    const { academyId, matchId, heardMs, unsent } = head;
    const room = directory.findMatch(head);
    if (!room) return;
    if (heardMs !== null) heard.learn({ academyId, matchId, heardMs, unsent: unsent ?? 0 });
    await bring(room, head);
  };
  const checkIncarnation = async (now: string): Promise<void> => {
    if (incarnation !== now) since = undefined;
    incarnation = now;
    const old = directory.matchRooms().filter((room) => (room.incarnation() ?? now) !== now);
    await Promise.all(old.map((room) => room.restart()));
  };
  const refreshBoards = async (): Promise<void> => {
    const watched = directory.boardRooms().filter((board) => !board.isQuiet());
    for (const refreshed of await Promise.allSettled(watched.map((board) => board.refresh()))) {
      if (refreshed.status === "rejected")
        logError(runtime, "a board was not refreshed", { error: refreshed.reason });
    }
  };
  return {
    tick: async () => {
      const now = await store.incarnation();
      if (!told(now.ok) || !now.ok) return;
      await checkIncarnation(now.value);
      const changed = await store.heads(since);
      if (!told(changed.ok) || !changed.ok) return;
      since = changed.value.next;
      await Promise.all(changed.value.heads.map(take));
      const nameless = directory.matchRooms().filter((room) => room.lacksNames());
      await Promise.all(nameless.map((room) => room.catchUp()));
      await refreshBoards();
      directory.settle();
    },
  };
};
