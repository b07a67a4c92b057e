import { type ReactNode, useState } from 'react';
import { NARROW, useMedia } from '../../useMedia.ts';

/** A group of fields that folds: open at first where there is room. */
export function EditGroup({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const narrow = useMedia(NARROW);
  const [open, setOpen] = useState(!narrow);
  return (
    <details className="build-group" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      <div className="build-group-fields">{children}</div>
    </details>
  );
}
