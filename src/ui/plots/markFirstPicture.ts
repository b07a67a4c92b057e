let announce: () => void = () => undefined;
let marked = false;

/** Settles when the first curve of this page has been painted. */
export const firstPicture: Promise<void> = new Promise((resolve) => {
  announce = resolve;
});

/** Sets the performance mark `conewright:first-picture` when the first curve of this page has been painted. */
export function markFirstPicture(): void {
  if (marked) return;
  marked = true;
  performance.mark('conewright:first-picture');
  announce();
}
