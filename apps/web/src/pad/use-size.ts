import { useLayoutEffect, useRef, useState } from "react";

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The size of an element in CSS pixels, kept up to date; `undefined` before it was laid out. */
export const useSize = <E extends HTMLElement>() => {
  const ref = useRef<E>(null);
  const [size, setSize] = useState<Size | undefined>(undefined);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      setSize(width > 0 && height > 0 ? { width, height } : undefined);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, size };
};
