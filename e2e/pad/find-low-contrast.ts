import type { Page } from "@playwright/test";

/**
 * Every visible text, and every line of the court's drawing, whose contrast with what is behind it is under
 * `least`: "text: 5.2". Colours are measured as the browser paints them. What is out of use counts too: in
 * the sun it has to be read all the same.
 */
export const findLowContrast = (page: Page, least: number): Promise<string[]> =>
  page.evaluate((atLeast) => {
    const pen = Object.assign(document.createElement("canvas"), { width: 1, height: 1 }).getContext("2d", {
      willReadFrequently: true,
    });
    if (!pen) throw new Error("this browser has no canvas to measure colours on");
    const paint = (colour: string): readonly number[] => {
      pen.clearRect(0, 0, 1, 1);
      pen.fillStyle = colour;
      pen.fillRect(0, 0, 1, 1);
      return [...pen.getImageData(0, 0, 1, 1).data];
    };
    const linear = (channel = 0): number => {
      const share = channel / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    };
    const luminance = ([r, g, b]: readonly number[]): number =>
      0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
    const behind = (element: Element | null): readonly number[] => {
      if (!element) return [255, 255, 255, 255];
      const colour = paint(getComputedStyle(element).backgroundColor);
      return (colour[3] ?? 0) > 250 ? colour : behind(element.parentElement);
    };
    const contrast = (element: Element, colour: string): number => {
      const [a, b] = [luminance(paint(colour)), luminance(behind(element))];
      return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    };
    const found: string[] = [];
    const judge = (element: Element, colour: string, what: string): void => {
      const ratio = contrast(element, colour);
      if (ratio < atLeast) found.push(`${what}: ${ratio.toFixed(1)}`);
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { parentElement: element, textContent } = walker.currentNode;
      const text = textContent?.trim();
      if (!text || !element?.checkVisibility() || element.closest("script, style, option")) continue;
      const { color, fill } = getComputedStyle(element);
      judge(element, element instanceof SVGElement ? fill : color, text.slice(0, 40));
    }
    for (const line of document.querySelectorAll("[data-testid=court] path")) {
      const { stroke } = getComputedStyle(line);
      const halo = stroke === getComputedStyle(line.closest("div") ?? line).backgroundColor;
      if (stroke !== "none" && !halo) judge(line, stroke, `a line of the court, ${stroke}`);
    }
    return [...new Set(found)];
  }, least);
