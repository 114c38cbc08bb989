import { EndPhoneButton, TakeBackCodeButton } from "./code-actions.tsx";
import { padLink, spacedCode } from "./code-links.ts";
import styles from "./desk.module.css";
import { QrCode } from "./qr-code.tsx";

export interface ShownCode {
  readonly codeId: string;
  /** Null when it can no longer be read. */
  readonly code: string | null;
}

export interface ShownPhone {
  readonly sessionId: string;
  readonly name: string;
}

interface CodeCardProps {
  /** Such as "Court 3". */
  readonly courtName: string;
  readonly code: ShownCode;
  readonly phones: readonly ShownPhone[];
  readonly publicUrl: string;
  readonly canChange: boolean;
}

function Phones({ phones, canChange }: Pick<CodeCardProps, "phones" | "canChange">) {
  if (phones.length === 0) return null;
  return (
    <ul className={styles.phones}>
      {phones.map(({ sessionId, name }) => (
        <li key={sessionId}>
          <span>{name}</span>
          {canChange ? <EndPhoneButton sessionId={sessionId} name={name} /> : null}
        </li>
      ))}
    </ul>
  );
}

/** A court's code to read out or scan, who is in with it, and how to end it. */
export function CodeCard({ courtName, code, phones, publicUrl, canChange }: CodeCardProps) {
  return (
    <div className={styles.codeCard}>
      {code.code === null ? (
        <p>This code can no longer be read. Take it back and make another.</p>
      ) : (
        <div className={styles.codeShown}>
          <QrCode text={padLink(publicUrl, code.code)} label={`Opens the pad for ${courtName}`} />
          <p>
            <span className={styles.quiet}>Court code</span>
            <b className={styles.code}>{spacedCode(code.code)}</b>
          </p>
        </div>
      )}
      <Phones phones={phones} canChange={canChange} />
      {canChange ? <TakeBackCodeButton codeId={code.codeId} about={`of ${courtName}`} /> : null}
    </div>
  );
}
