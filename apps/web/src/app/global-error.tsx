"use client";
import "../styles/tokens.css";
import "../styles/base.css";
import ErrorPage from "./error.tsx";

/** The same where even the document around the page failed. */
export default function GlobalErrorPage(props: Parameters<typeof ErrorPage>[0]) {
  return (
    <html lang="en">
      <body>
        <title>This page could not be made</title>
        <ErrorPage {...props} />
      </body>
    </html>
  );
}
