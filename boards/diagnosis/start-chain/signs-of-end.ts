import type { ObservationId } from '../observations/observations';
import type { EndId } from './course';

/** How likely a person who looks says yes to each observation; what is not named is as rare as elsewhere. */
export type Signs = Readonly<Partial<Record<ObservationId, number>>>;

const NOTHING: Signs = { 'nothing-on-press': 0.95 };
const NO_PICTURE: Signs = { 'no-picture': 0.93, 'no-beep': 0.85, 'drive-light-dark': 0.3 };

/**
 * What each end of a start looks like. The kind of sign follows from the end; how often it is noticed is
 * common practice, no source.
 */
export const SIGNS_OF_END: Readonly<Record<EndId, Signs>> = {
  'no-mains': { ...NOTHING, 'no-standby-light': 0.9, 'power-light-dark': 0.3 },
  'no-standby': { ...NOTHING, 'no-standby-light': 0.9, 'power-light-dark': 0.3 },
  'standby-sags': { ...NOTHING, 'no-standby-light': 0.5, 'standby-light': 0.2 },
  'not-asked': { ...NOTHING, 'standby-light': 0.85, 'power-button-dead': 0.4, 'only-pins-start': 0.4 },
  'asked-now-and-then': {
    'press-now-and-then': 0.9,
    'nothing-on-press': 0.3,
    'power-button-dead': 0.15,
    'standby-light': 0.85,
    'only-pins-start': 0.2,
  },
  'not-heard': { ...NOTHING, 'standby-light': 0.85 },
  'no-rails': { ...NOTHING, 'standby-light': 0.7, 'no-standby-light': 0.15 },
  trips: { twitch: 0.75, 'nothing-on-press': 0.35, 'standby-light': 0.7, 'fan-twitch': 0.1 },
  sags: {
    'starts-and-stops': 0.35,
    twitch: 0.3,
    'no-picture': 0.3,
    'off-after-seconds': 0.25,
    'press-now-and-then': 0.2,
    restarts: 0.2,
  },
  'held-in-reset': { ...NO_PICTURE, 'kept-in-reset': 0.6 },
  'no-code': { ...NO_PICTURE, 'kept-in-reset': 0.05 },
  'memory-missing': { ...NO_PICTURE, 'no-beep': 0.4, 'beep-code': 0.5, 'starts-and-stops': 0.15 },
  'fan-stops-it': { 'off-after-seconds': 0.95, 'fan-error': 0.3 },
  'fan-complained-of': { 'fan-error': 0.95, 'stops-in-checks': 0.4 },
  'forced-off': { 'off-after-seconds': 0.9, 'starts-and-stops': 0.3, 'starts-on-mains': 0.5 },
  'overheats-soon': { 'off-after-seconds': 0.7, 'off-after-minutes': 0.2, 'starts-and-stops': 0.15 },
  'overheats-late': { 'off-after-minutes': 0.8, 'off-in-use': 0.4, freezes: 0.15, restarts: 0.1 },
  restarts: { restarts: 0.9, 'starts-and-stops': 0.1 },
  runs: {},
};
