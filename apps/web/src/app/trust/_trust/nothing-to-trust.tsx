import { MessagePage } from "../../../shell/message-page.tsx";
import shell from "../../../shell/shell.module.css";

/** Where there is no local authority: a certificate that devices know, or plain http. */
export function NothingToTrust({ isEncrypted }: { readonly isEncrypted: boolean }) {
  return (
    <MessagePage title="Nothing to trust here">
      {isEncrypted ? (
        <p>This address has a certificate that devices know already.</p>
      ) : (
        <p>
          This Courtloom runs on plain http and has no certificate. To let phones keep the pad without a
          network, start it with <code>npm start -- --https</code>, then open this page again.
        </p>
      )}
      <a className={shell.link} href="/">
        Open Courtloom
      </a>
    </MessagePage>
  );
}
