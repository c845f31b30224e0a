import type { HostApi } from '../../boards/host';

/** One handler for each channel. Both front doors answer from this table and nothing else. */
export type HostCalls = Omit<HostApi, 'onRequest'>;
