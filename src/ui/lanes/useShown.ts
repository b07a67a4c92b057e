import { type RefObject, useEffect } from 'react';

/** Brings an element into sight when it is picked from elsewhere on the page, as by a finding's link. */
export function useShown(ref: RefObject<Element | null>, picked: boolean, within: string): void {
  useEffect(() => {
    const focused = document.activeElement;
    const elsewhere = focused !== null && focused !== document.body && focused.closest(within) === null;
    if (picked && elsewhere) ref.current?.scrollIntoView({ block: 'nearest' });
  }, [ref, picked, within]);
}
