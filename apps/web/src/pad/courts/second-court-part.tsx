import { useEffect, useRef, useState } from "react";
import type { Elsewhere } from "../courtside.ts";
import { Segment } from "../segment.tsx";
import styles from "./courts.module.css";
import { type SecondCourt, useSecondCourt } from "./second-court.ts";

const STATE_WORDS: Readonly<Record<Elsewhere["state"], string>> = {
  waiting: "waiting",
  playing: "playing",
  suspended: "suspended",
};

type Found = "asking" | "unreached" | readonly Elsewhere[];

const ChooseCourt = ({ second, onDone }: { second: SecondCourt; onDone: () => void }) => {
  const [found, setFound] = useState<Found>("asking");
  const list = useRef<HTMLFieldSetElement>(null);
  const { add } = second;
  // Asked once for each time that the list is opened: the courts of a day change while it stands open.
  const [ask] = useState(() => second.list);
  useEffect(() => {
    let isWanted = true;
    const read = async () => {
      const answer = await ask();
      if (isWanted) setFound(answer ?? "unreached");
    };
    void read();
    return () => {
      isWanted = false;
    };
  }, [ask]);
  useEffect(() => {
    if (Array.isArray(found)) list.current?.scrollIntoView({ block: "start" });
  }, [found]);
  if (found === "asking") return <p role="status">Asking which courts there are…</p>;
  if (found === "unreached")
    return (
      <p role="status">No signal: the other courts are not known. Open this again where there is signal.</p>
    );
  if (found.length === 0)
    return <p role="status">No match is being played or waiting on another court today.</p>;
  const open = async (matchId: string) => {
    if (await add(matchId)) onDone();
    else setFound("unreached");
  };
  return (
    <fieldset ref={list} className={styles.list} aria-label="Matches on other courts">
      {found.map(({ matchId, courtName, names, state, charting }) => (
        <button key={matchId} type="button" onClick={() => void open(matchId)}>
          <b>
            {courtName}: {names.A} – {names.B}
          </b>
          <span>{[STATE_WORDS[state], charting && `${charting} charts it`].filter(Boolean).join(", ")}</span>
        </button>
      ))}
    </fieldset>
  );
};

/** For staff: a second court beside this one, or away with it. Nothing for a helper, whose court is the code's. */
export const SecondCourtPart = ({ onDone }: { readonly onDone: () => void }) => {
  const second = useSecondCourt();
  const [isChoosing, setChoosing] = useState(false);
  if (!second) return null;
  const { other } = second;
  const leave = () => {
    other?.close();
    onDone();
  };
  return (
    <section>
      <h3>Second court</h3>
      {isChoosing ? (
        <ChooseCourt second={second} onDone={onDone} />
      ) : (
        <Segment
          label="Second court"
          choices={
            other
              ? [{ id: "close", label: `Chart one court again: close the second`, onPress: leave }]
              : [{ id: "add", label: "Add a second court", onPress: () => setChoosing(true) }]
          }
        />
      )}
    </section>
  );
};
