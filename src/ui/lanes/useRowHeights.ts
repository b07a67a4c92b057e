import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';

/**
 * Heights of several elements by key, followed as their content changes. Give each element the ref that `refOf(key)`
 * returns; the heights are known before the first paint.
 */
export function useRowHeights(): {
  readonly heights: ReadonlyMap<string, number>;
  readonly refOf: (key: string) => (element: HTMLElement | null) => void;
} {
  const [heights, setHeights] = useState<ReadonlyMap<string, number>>(new Map());
  const elements = useRef(new Map<string, HTMLElement>());
  const refs = useRef(new Map<string, (element: HTMLElement | null) => void>());
  const observer = useRef<ResizeObserver | null>(null);
  const rowsChanged = useRef(true);

  const measure = useCallback(() => {
    setHeights((old) => {
      const now = new Map<string, number>();
      for (const [key, element] of elements.current) now.set(key, Math.ceil(element.getBoundingClientRect().height));
      const same = now.size === old.size && [...now].every(([key, height]) => old.get(key) === height);
      return same ? old : now;
    });
  }, []);
  // Rows come and go with any render: measured only then, since reading a height makes the page lay itself out. Rows that
  // change their content are seen by the observer.
  useLayoutEffect(() => {
    if (!rowsChanged.current) return;
    rowsChanged.current = false;
    measure();
  });
  useEffect(() => {
    observer.current = new ResizeObserver(measure);
    for (const element of elements.current.values()) observer.current.observe(element);
    return () => observer.current?.disconnect();
  }, [measure]);

  const refOf = useCallback((key: string) => {
    const made = refs.current.get(key);
    if (made) return made;
    const ref = (element: HTMLElement | null) => {
      const before = elements.current.get(key);
      if (before !== (element ?? undefined)) rowsChanged.current = true;
      if (before && before !== element) observer.current?.unobserve(before);
      if (element) {
        elements.current.set(key, element);
        observer.current?.observe(element);
      } else {
        elements.current.delete(key);
      }
    };
    refs.current.set(key, ref);
    return ref;
  }, []);
  return { heights, refOf };
}
