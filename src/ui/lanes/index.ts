export { Lanes } from './Lanes.tsx';
export { TeachPort } from './TeachPort.tsx';
