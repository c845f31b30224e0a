import type { ChannelName, Input, Output } from '../../boards/host';

/** One handler for each channel. Both front doors answer from this table and nothing else. */
export type HostCalls = {
  readonly [C in ChannelName]: (input: Input<C>) => Promise<Output<C>>;
};
