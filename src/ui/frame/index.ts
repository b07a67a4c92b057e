// All that stands round the plots and the lanes: one chunk, fetched after the first picture.
export { FindingsStrip } from './FindingsStrip.tsx';
export { Header } from './Header.tsx';
export { KeyStrip } from './KeyStrip.tsx';
export { Notices } from './Notices.tsx';
export { PlotBar } from './PlotBar.tsx';
