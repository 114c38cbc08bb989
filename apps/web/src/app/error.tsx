"use client";
import { ActionButton } from "../form/action-button.tsx";
import { MessagePage } from "../shell/message-page.tsx";

interface ErrorPageProps {
  readonly error: Error & { readonly digest?: string };
  readonly retry: () => void;
}

/** Something failed while a page was made; the server's log has it under the same mark. */
export default function ErrorPage({ error, retry }: ErrorPageProps) {
  return (
    <MessagePage title="This page could not be made">
      <p>The server may be starting, or cannot reach its data. What was charted is safe. Try again.</p>
      {error.digest ? <p>If it stays so, tell whoever runs the server: mark {error.digest}.</p> : null}
      <div>
        <ActionButton label="Try again" primary onPress={retry} />
      </div>
    </MessagePage>
  );
}
