import { type ReactNode, useId, useLayoutEffect, useRef, useState } from 'react';
import './Popover.css';
import { placeBeside } from './placeBeside.ts';

/**
 * A button that opens a small panel beside itself: not modal, closed by Escape or a click elsewhere. The panel's content is
 * rendered only while it is open; `children` may ask to close it.
 */
export function Popover({
  face,
  label,
  className = 'frame-button',
  mark,
  labelled = false,
  place = placeBeside,
  children,
}: {
  face: ReactNode;
  /** Accessible name of the panel, and of the button where its face does not say enough. */
  label: string;
  className?: string;
  /** Sets `data-NAME` on the button, for what opens it from elsewhere. */
  mark?: string;
  /** The label is the button's name too, since its face does not tell it from others of its kind. */
  labelled?: boolean;
  /** Puts the panel where it belongs; beside its button unless told otherwise. */
  place?: (from: DOMRect, panel: HTMLElement) => void;
  children: (close: () => void) => ReactNode;
}) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);
  useLayoutEffect(() => {
    const [from, to] = [button.current, panel.current];
    if (!open || !from || !to) return;
    const put = (): void => place(from.getBoundingClientRect(), to);
    put();
    const sizes = new ResizeObserver(put);
    sizes.observe(to);
    window.addEventListener('resize', put);
    return () => {
      sizes.disconnect();
      window.removeEventListener('resize', put);
    };
  }, [open, place]);
  return (
    <>
      <button
        type="button"
        ref={button}
        className={className}
        {...(mark === undefined ? {} : { [`data-${mark}`]: '' })}
        popoverTarget={id}
        aria-expanded={open}
        aria-controls={id}
        title={label}
        aria-label={typeof face === 'string' && !labelled ? undefined : label}
      >
        {face}
      </button>
      <div
        id={id}
        ref={panel}
        className="popover"
        popover="auto"
        role="dialog"
        tabIndex={open ? 0 : -1}
        aria-label={label}
        onToggle={(event) => {
          // A panel inside this one tells of itself here too.
          if (event.target === event.currentTarget) setOpen(event.newState === 'open');
        }}
      >
        {open && children(() => hideOutermost(panel.current))}
      </div>
    </>
  );
}

/** What is done in a panel opened from another is done in both. */
function hideOutermost(panel: HTMLElement | null): void {
  const around = panel?.parentElement?.closest<HTMLElement>('[popover]');
  if (around) hideOutermost(around);
  else panel?.hidePopover();
}
