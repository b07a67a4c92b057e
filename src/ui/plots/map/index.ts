export { AlignmentMapView } from './AlignmentMapView.tsx';
export type { MapBox } from './MapDot.tsx';
