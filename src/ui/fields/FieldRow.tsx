import type { ReactNode } from 'react';
import './field-row.css';

/** A name and the value beside it, as one line of a panel; `about` explains a word of the trade while pointed at. */
export function FieldRow({
  name,
  about,
  children,
}: {
  readonly name: ReactNode;
  readonly about?: string;
  readonly children: ReactNode;
}) {
  return (
    <div className="field-row" title={about}>
      <span className="field-row-name">{name}</span>
      {children}
    </div>
  );
}
