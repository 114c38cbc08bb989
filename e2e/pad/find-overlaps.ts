import type { Page } from "@playwright/test";

/**
 * Pairs of things that can be pressed, and the court, that lie over one another on the screen by more than a
 * line's width: "Undo over Done". Things within one another do not count. Empty when there are none.
 */
export const findOverlaps = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const within = document.querySelector("dialog:modal") ?? document;
    const parts = [
      ...within.querySelectorAll("button, a[href], select, input, [data-testid=court], [data-testid=score]"),
    ]
      .filter((element) => element.checkVisibility())
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      // What is scrolled out of its row's sight lies over nothing.
      .filter(({ element, box }) => {
        const row = element.closest("ol, fieldset")?.getBoundingClientRect();
        return (
          !row || (box.left >= row.left - 1 && box.right <= row.right + 1 && box.bottom <= row.bottom + 1)
        );
      });
    const nameOf = (element: Element): string =>
      (element.getAttribute("aria-label") ?? element.textContent ?? "").trim().slice(0, 30);
    const found: string[] = [];
    for (const [i, one] of parts.entries()) {
      for (const other of parts.slice(i + 1)) {
        if (one.element.contains(other.element) || other.element.contains(one.element)) continue;
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        if (wide > 3 && high > 3) found.push(`${nameOf(one.element)} over ${nameOf(other.element)}`);
      }
    }
    return found;
  });
