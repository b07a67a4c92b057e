import { type ReactNode, useLayoutEffect, useRef, useState } from 'react';

/** A box for a wide table: where it has to be scrolled it can be reached and scrolled by keys. */
export function Scrolling({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  const ref = useRef<HTMLElement>(null);
  const [wide, setWide] = useState(false);
  useLayoutEffect(() => {
    const element = ref.current;
    const inside = element?.firstElementChild;
    if (!element || !inside) return;
    const measure = () => setWide(element.scrollWidth > element.clientWidth);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    observer.observe(inside);
    return () => observer.disconnect();
  }, []);
  return (
    <section
      ref={ref}
      className="build-scroll"
      aria-label={wide ? `${label}, scrolls sideways` : undefined}
      tabIndex={wide ? 0 : undefined}
    >
      {children}
    </section>
  );
}
