import type { ReactNode } from 'react';
import './field-row.css';

/** A name and the value beside it, as one line of a panel. */
export function FieldRow({ name, children }: { readonly name: ReactNode; readonly children: ReactNode }) {
  return (
    <div className="field-row">
      <span className="field-row-name">{name}</span>
      {children}
    </div>
  );
}
