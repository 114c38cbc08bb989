import type { ReactNode } from "react";
import { ApiProvider } from "../../client/api-provider.tsx";
import { PlainHttpNotice } from "../../shell/plain-http-notice.tsx";

/** Around the screens that change things by the procedures. */
export default function ShellLayout({ children }: { readonly children: ReactNode }) {
  return (
    <ApiProvider>
      <PlainHttpNotice />
      {children}
    </ApiProvider>
  );
}
