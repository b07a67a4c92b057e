// Inner nodes of a loudspeaker's circuit. A network's own names never begin with `@`.

/** Between a driver's coil and its gyrator. */
export const emfNode = (partId: string): string => `@emf:${partId}`;
/** On the acoustical side of a driver's gyrator, before its moving parts. */
export const coneNode = (partId: string): string => `@cone:${partId}`;
/** The air in a chamber. */
export const airNode = (chamberId: string): string => `@air:${chamberId}`;
/** The air at the mouth of a port that is a pipe. */
export const mouthNode = (portId: string): string => `@mouth:${portId}`;
/** The air in a line after its piece `k`. */
export const lineNode = (lineId: string, k: number): string => `@line:${lineId}:${k}`;

/** Branch ids of a driver, a chamber, a port. */
export const coilBranch = (partId: string): string => `${partId} coil`;
export const movingBranch = (partId: string): string => `${partId} moving parts`;
export const gyratorBranch = (partId: string): string => `${partId} motor`;
export const tableBranch = (partId: string): string => `${partId} measured impedance`;
export const volumeBranch = (chamberId: string): string => `${chamberId} air`;
export const leakBranch = (chamberId: string): string => `${chamberId} leak`;
export const portBranch = (portId: string): string => `${portId} port air`;
export const radiatorBranch = (radiatorId: string): string => `${radiatorId} passive radiator`;
export const lineMouthBranch = (lineId: string): string => `${lineId} mouth`;
