/**
 * What a measured process may serve: the service; the least that the framework can do; the same with the service's
 * plugins. In a file of its own, since a bare process must load nothing else.
 */
export const served = ['folders', 'echo', 'plugins'] as const;
export type Served = (typeof served)[number];
