import { useId, useState } from "react";
import form from "../form/form.module.css";
import styles from "./plan.module.css";

interface ShareFieldProps {
  readonly label: string;
  /** Read out after the label. */
  readonly about: string;
  /** A share in [0, most]. */
  readonly value: number;
  readonly most: number;
  readonly onChange: (share: number) => void;
}

/** A share in per cent, by a slider in steps of 5 or as a number. */
export function ShareField({ label, about, value, most, onChange }: ShareFieldProps) {
  const id = useId();
  // While somebody types, the field shows what they typed, also when that is no number yet.
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const most100 = Math.round(most * 100);
  const inHundred = Math.round(value * 100);
  const put = (text: string): void => {
    const number = Number(text);
    if (text.trim() === "" || !Number.isFinite(number)) return;
    onChange(Math.min(most100, Math.max(0, Math.round(number))) / 100);
  };
  return (
    <div className={styles.share}>
      <label className={form.label} htmlFor={id}>
        {label}
        <span className="vh"> {about}</span>
      </label>
      <input
        type="range"
        min={0}
        max={most100}
        step={5}
        value={inHundred}
        aria-label={`${label}, slider, ${about}`}
        onChange={({ target }) => put(target.value)}
      />
      <input
        id={id}
        className={form.input}
        inputMode="numeric"
        maxLength={3}
        value={typed ?? String(inHundred)}
        onChange={({ target }) => {
          setTyped(target.value);
          put(target.value);
        }}
        onBlur={() => setTyped(undefined)}
      />
    </div>
  );
}
