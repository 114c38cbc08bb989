import { type FileWish, fileLanes } from "@courtloom/sync";
import { useContext, useEffect, useState } from "react";
import { AWAKE_WORDS } from "../feel/awake-words.ts";
import { usePadDevice } from "../feel/pad-device.ts";
import type { PadSnapshot } from "../pad-session.ts";
import { Segment } from "../segment.tsx";
import styles from "./offline.module.css";
import { clockWords } from "./offline-words.ts";
import { OutboxContext } from "./outbox-context.ts";
import { type PhoneStorage, readPhoneStorage } from "./phone-storage.ts";
import { phoneWords } from "./phone-words.ts";
import { entryCount, fileName, saveFile } from "./save-file.ts";
import { useShellKept } from "./use-shell-kept.ts";

const useSaving = (courtName: string) => {
  const outbox = useContext(OutboxContext);
  const [said, setSaid] = useState<string>();
  const save = async (wish: FileWish) => {
    const writtenMs = Date.now();
    const file = outbox && (await fileLanes(outbox, wish, writtenMs));
    if (!file) return setSaid("Nothing to save: all is sent.");
    const name = fileName(courtName, writtenMs);
    saveFile(file, name);
    const count = entryCount(file);
    setSaid(`${count === 1 ? "1 entry" : `${count} entries`} saved as ${name}. Give the file to the desk.`);
  };
  return { said, save: (wish: FileWish) => void save(wish) };
};

const useStorage = (): PhoneStorage | undefined => {
  const [storage, setStorage] = useState<PhoneStorage>();
  useEffect(() => {
    let wanted = true;
    const read = async () => {
      const found = await readPhoneStorage();
      if (wanted) setStorage(found);
    };
    void read();
    return () => {
      wanted = false;
    };
  }, []);
  return storage;
};

interface ThisPhoneProps {
  readonly snapshot: PadSnapshot;
  readonly onLeave: () => void;
}

/** What this phone holds, how it is kept, and how it gets to the desk without a network. SPEC PD44, PD45. */
export const ThisPhone = ({ snapshot, onLeave }: ThisPhoneProps) => {
  const { record, status, otherUnsent, durable } = snapshot;
  const storage = useStorage();
  const opens = useShellKept();
  const { said, save } = useSaving(record.courtName);
  const { clockAheadMinutes } = status;
  const { keptAwake } = usePadDevice();
  return (
    <section data-testid="this-phone">
      <h3>This phone</h3>
      <ul>
        <li>{status.unsent} unsent from this match</li>
        {otherUnsent > 0 && (
          <li>
            {otherUnsent} unsent from earlier charting on this phone. What belongs to another court is sent
            when that court’s code is entered here.
          </li>
        )}
        {status.rejected.map(({ n, entry }) => (
          <li key={entry.id}>Not taken by the server: entry {n}, kept here</li>
        ))}
        {durable && storage && phoneWords(storage, opens).map((text) => <li key={text}>{text}</li>)}
        <li>{AWAKE_WORDS[keptAwake]}</li>
        {clockAheadMinutes !== undefined && <li>{clockWords(clockAheadMinutes)}</li>}
      </ul>
      <Segment
        label="Save to a file"
        choices={[
          { id: "unsent", label: "Save unsent to a file", onPress: () => save("unsent") },
          {
            id: "match",
            label: "Save everything of this match",
            onPress: () => save({ matchId: record.matchId }),
          },
        ]}
      />
      <p role="status" className={styles.said} data-testid="saved">
        {said}
      </p>
      <Segment
        label="This phone"
        choices={[{ id: "leave", label: "Another name or match", onPress: onLeave }]}
      />
    </section>
  );
};
