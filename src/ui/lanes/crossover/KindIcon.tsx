import { symbolOf } from '../../../plot/symbols.ts';
import type { PassiveKind } from './newParts.ts';
import { KIND_WORDS } from './partNames.ts';

/** A kind of part as its symbol; the button around it says it in words. */
export function KindIcon({ kind }: { readonly kind: PassiveKind }) {
  return (
    <svg className="kind-icon" viewBox="-2.2 -1.1 4.4 2.2" aria-hidden="true">
      <title>{KIND_WORDS[kind]}</title>
      <path d={symbolOf(kind).outline} />
    </svg>
  );
}
