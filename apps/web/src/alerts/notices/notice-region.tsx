import Link from "next/link";
import { useSyncExternalStore } from "react";
import { Mark } from "../../loom/mark.tsx";
import { alertHref, hrefWords } from "../alert-href.ts";
import { whereWords } from "../alert-item.tsx";
import { alertSentence } from "../alert-words.ts";
import styles from "../alerts.module.css";
import { STATE_FLAGS } from "../state-words.ts";
import { useAlert } from "../use-alerts.ts";
import { useNoticeTools } from "./notice-tools.ts";

function Notice({ text }: { readonly text: string }) {
  const { notices } = useNoticeTools();
  const { line } = useAlert(text);
  if (line === undefined) return null;
  const [mark, word] = STATE_FLAGS[line.state];
  const about = whereWords(line);
  const putAway = () => notices.dismiss(text);
  return (
    <li className={styles.notice} data-testid="notice">
      <Mark name={mark} />
      <p>
        <b>
          {word}. {about}
        </b>
        <span>{alertSentence(line)}</span>
        {line.bothOwn ? <b>Both ours: speak to neither</b> : null}
      </p>
      <div>
        <Link className={styles.press} href={alertHref(line)} prefetch={false} onClick={putAway}>
          {hrefWords(line)}
          <span className="vh">, {about}</span>
        </Link>
        <button type="button" className={styles.press} onClick={putAway}>
          Put away<span className="vh">, {about}</span>
        </button>
      </div>
    </li>
  );
}

/** What this person is told of, over the foot of the page until it is put away. Read aloud when it comes. SPEC rule AS22. */
export function NoticeRegion() {
  const { notices } = useNoticeTools();
  const shown = useSyncExternalStore(notices.subscribe, notices.get, notices.get);
  return (
    <section className={styles.notices} role="alert" aria-label="Notices" data-testid="notices">
      {shown.length === 0 ? null : (
        <ul>
          {shown.map((text) => (
            <Notice key={text} text={text} />
          ))}
        </ul>
      )}
    </section>
  );
}
