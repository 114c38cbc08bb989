import type { Metadata } from "next";
import { headers } from "next/headers";
import form from "../../form/form.module.css";
import { httpsOrigin } from "../../server/https-origin.ts";
import shell from "../../shell/shell.module.css";
import { guessSystem } from "./_trust/guess-system.ts";
import { NothingToTrust } from "./_trust/nothing-to-trust.tsx";
import { type AuthorityNote, readAuthority } from "./_trust/read-authority.ts";
import { TrustCheck } from "./_trust/trust-check.tsx";
import { TrustSteps } from "./_trust/trust-steps.tsx";
import styles from "./trust.module.css";

export const metadata: Metadata = { title: "Trust this machine" };

/** Groups of four pairs, to be compared by eye. */
const groupsOf = (fingerprint: string): string[] =>
  fingerprint.match(/(?:[0-9A-F]{2}:?){4}/g) ?? [fingerprint];

function Get({ authority }: { readonly authority: AuthorityNote }) {
  return (
    <section className={shell.part} aria-labelledby="get">
      <h2 id="get">1. Get the certificate</h2>
      <p>
        <b>Trust only a machine that you know.</b> Until you remove the certificate, whoever has this
        machine's key can pass for pages with a local name or address on this device. It is made out for those
        only. The key never leaves the machine.
      </p>
      <a className={`${form.button} ${form.primary}`} href="/trust/courtloom.crt">
        Get the certificate
      </a>
      <p className={shell.quiet}>
        “{authority.name}”, good until {authority.until}
      </p>
    </section>
  );
}

function Compare({ authority }: { readonly authority: AuthorityNote }) {
  return (
    <section className={shell.part} aria-labelledby="compare">
      <h2 id="compare">2. Compare its fingerprint</h2>
      <p>
        Where the device shows the certificate, its SHA-256 fingerprint has to be the one that was printed
        when Courtloom was started. Ask at the desk. If it differs, do not install it.
      </p>
      <p className={styles.fingerprint}>
        {groupsOf(authority.fingerprint).map((group) => (
          <span key={group}>{group}</span>
        ))}
      </p>
    </section>
  );
}

/** How a device trusts this machine's certificate; also over plain http, for those that do not yet. */
export default async function TrustPage() {
  const asked = await headers();
  const isEncrypted = asked.get("x-forwarded-proto") === "https";
  const authority = await readAuthority();
  if (authority === undefined) return <NothingToTrust isEncrypted={isEncrypted} />;
  const origin = httpsOrigin(asked.get("host") ?? "", authority.httpsPort);
  return (
    <main className={`${shell.page} ${shell.narrow}`}>
      <header>
        <h1>Trust this machine</h1>
        <p className={shell.lead}>
          Courtloom runs on a machine of this academy, which no public authority vouches for. A device that
          trusts the machine's own certificate opens the pad without a network, keeps its screen on while
          charting and sends everything encrypted.
        </p>
      </header>
      {isEncrypted ? (
        <div className={styles.check}>
          <p>
            This page came by https. If no warning came before it, this device trusts the machine. If one did,
            follow the steps.
          </p>
          <a className={form.button} href="/pad">
            Open the pad
          </a>
        </div>
      ) : null}
      {!isEncrypted && origin ? <TrustCheck origin={origin} /> : null}
      <Get authority={authority} />
      <Compare authority={authority} />
      <section className={shell.part} aria-labelledby="steps">
        <h2 id="steps">3. Trust it, and remove it after the event</h2>
        <TrustSteps name={authority.name} open={guessSystem(asked.get("user-agent"))} />
      </section>
    </main>
  );
}
