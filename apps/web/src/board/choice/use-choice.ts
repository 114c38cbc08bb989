import { useSyncExternalStore } from "react";
import { useBoardTools } from "../board-tools.ts";
import { useBoard } from "../use-board.ts";
import { type BoardChoice, EVERYTHING, standsOut } from "./board-choice.ts";

const never = () => () => {};

/** What the person wants to see; everything on a public wall. */
export const useChoice = (): BoardChoice => {
  const store = useBoardTools()?.choice;
  const read = store?.get ?? (() => EVERYTHING);
  return useSyncExternalStore(store?.subscribe ?? never, read, read);
};

/** Ids of the courts that do not stand out, drawn again only when there are others. */
export const useQuietCourts = (): ReadonlySet<string> => {
  const choice = useChoice();
  const ids = useBoard(({ board }) => {
    if (choice.filter === "all") return "";
    return board.order
      .filter((id) => {
        const court = board.courts.get(id);
        return court !== undefined && !standsOut(court.tile, choice);
      })
      .join(" ");
  });
  return new Set(ids === "" ? [] : ids.split(" "));
};
