import type { Command } from './command';
import type { HostState } from './state';

export const hostArrived: Command<HostState> = {
  name: 'hostArrived',
  label: 'The host answered',
  perform: (state, host) => ({ ...state, host }),
};
