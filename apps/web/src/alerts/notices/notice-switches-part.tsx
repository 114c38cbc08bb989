import { useSyncExternalStore } from "react";
import styles from "../alerts.module.css";
import { useNoticeTools } from "./notice-tools.ts";

/** Turns sound and vibration of notices on and off; what is turned on is given at once, to know it by. */
export function NoticeSwitchesPart() {
  const tools = useNoticeTools();
  const switches = useSyncExternalStore(tools.switches.subscribe, tools.switches.get, tools.switches.get);
  const flip = (name: "sound" | "vibration", isOn: boolean) => {
    tools.switches.set({ ...switches, [name]: isOn });
    if (isOn) tools.give();
  };
  return (
    <fieldset className={styles.switches}>
      <legend>Notices on this device</legend>
      <label>
        <input
          type="checkbox"
          checked={switches.sound}
          onChange={(event) => flip("sound", event.currentTarget.checked)}
        />
        <span>Sound</span>
      </label>
      {tools.canVibrate ? (
        <label>
          <input
            type="checkbox"
            checked={switches.vibration}
            onChange={(event) => flip("vibration", event.currentTarget.checked)}
          />
          <span>Vibration</span>
        </label>
      ) : null}
      {switches.sound ? <p>Touch this page once after opening it: before that no page may sound.</p> : null}
    </fieldset>
  );
}
