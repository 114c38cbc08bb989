import { useEffect, useState } from "react";

/** The address of a link to another page of this site that a plain click follows; undefined for all others. */
const pageOf = (event: MouseEvent): string | undefined => {
  if (event.defaultPrevented || event.button !== 0) return undefined;
  if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return undefined;
  const link = event.target instanceof Element ? event.target.closest("a[href]") : null;
  if (!(link instanceof HTMLAnchorElement) || link.target || link.origin !== location.origin)
    return undefined;
  return link.pathname === location.pathname ? undefined : link.pathname + link.search;
};

/**
 * While `isOn`, a link to another page is not followed at once: its address is `asked`, until `answer` is called.
 * Closing or reloading the tab makes the browser ask.
 */
export const useLeaveGuard = (isOn: boolean) => {
  const [asked, setAsked] = useState<string | undefined>(undefined);
  useEffect(() => {
    if (!isOn) return;
    const onClick = (event: MouseEvent): void => {
      const page = pageOf(event);
      if (page === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      setAsked(page);
    };
    const onUnload = (event: BeforeUnloadEvent): void => event.preventDefault();
    // Before React hears of it, whose links would follow it.
    document.addEventListener("click", onClick, { capture: true });
    window.addEventListener("beforeunload", onUnload);
    return () => {
      document.removeEventListener("click", onClick, { capture: true });
      window.removeEventListener("beforeunload", onUnload);
    };
  }, [isOn]);
  return { asked, answer: () => setAsked(undefined) };
};
