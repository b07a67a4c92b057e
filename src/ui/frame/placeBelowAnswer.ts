import { placeBeside } from './placeBeside.ts';

const EDGE_PX = 8;
/** With less room than this below the key figures the panel goes beside its button after all. */
const LEAST_ROOM_PX = 180;

/** Docks a panel of fixed position below the key figures, over the lanes, so that plots and figures stay in sight. */
export function placeBelowAnswer(from: DOMRect, panel: HTMLElement): void {
  const figures = document.querySelector('.app-key')?.getBoundingClientRect();
  const { style } = panel;
  const room = figures ? window.innerHeight - figures.bottom - EDGE_PX : 0;
  if (!figures || figures.bottom <= 0 || room < LEAST_ROOM_PX) {
    style.width = '';
    style.maxWidth = '';
    placeBeside(from, panel);
    return;
  }
  style.left = `${EDGE_PX}px`;
  style.top = `${figures.bottom}px`;
  style.bottom = 'auto';
  style.width = `${window.innerWidth - 2 * EDGE_PX}px`;
  style.maxWidth = 'none';
  style.maxHeight = `${room}px`;
}
