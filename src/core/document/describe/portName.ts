/**
 * What a port of this id is called where several may stand: ids of new ports say "port" already.
 * @example portName('P1') // 'port P1'; portName('port-1') // 'port 1'
 */
export const portName = (id: string): string => (/^port\b/i.test(id) ? id.replace('-', ' ') : `port ${id}`);
