import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element, known before the first paint and followed afterwards. */
export function useBoxWidth<E extends Element>(): [RefObject<E | null>, number] {
  const ref = useRef<E>(null);
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const measure = () => setWidthPx(Math.round(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, widthPx];
}
