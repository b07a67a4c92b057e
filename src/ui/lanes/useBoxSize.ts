import { useLayoutEffect, useRef, useState } from 'react';

export interface BoxSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The content size of an element, known before the first paint and followed afterwards. */
export function useBoxSize<E extends Element>(): [React.RefObject<E | null>, BoxSize] {
  const ref = useRef<E>(null);
  const [size, setSize] = useState<BoxSize>({ widthPx: 0, heightPx: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const widthPx = Math.round(element.clientWidth);
      const heightPx = Math.round(element.clientHeight);
      setSize((old) => (old.widthPx === widthPx && old.heightPx === heightPx ? old : { widthPx, heightPx }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, size];
}
