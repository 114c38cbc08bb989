import styles from "../trust.module.css";
import { SYSTEMS, type System } from "./systems.ts";

interface TrustStepsProps {
  /** The authority's name as devices list it. */
  readonly name: string;
  readonly open: System["id"] | undefined;
}

/** The steps for each kind of device, those of this one open. */
export function TrustSteps({ name, open }: TrustStepsProps) {
  const named = (text: string) => text.replaceAll("{name}", name);
  return (
    <div className={styles.systems}>
      {SYSTEMS.map(({ id, title, steps, forget }) => (
        <details key={id} open={id === open}>
          <summary>{title}</summary>
          <ol>
            {steps.map((step) => (
              <li key={step}>{named(step)}</li>
            ))}
          </ol>
          <p>
            <b>To remove it:</b> {named(forget)}
          </p>
        </details>
      ))}
    </div>
  );
}
