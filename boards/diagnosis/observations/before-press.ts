import { seenAt } from './observation';

/** What shows while the machine is off, plugged in or not. */
export const BEFORE_PRESS = seenAt('before-press', [
  [
    'standby-light',
    'see',
    'Is the light on the board lit while the machine is off?',
    'A small LED on the board glows as soon as mains is on.',
    ['standby_led_on'],
  ],
  [
    'no-standby-light',
    'see',
    'Does the board’s standby light stay dark, though it has one?',
    'Mains is on at the rear switch, and the LED on the board stays dark.',
  ],
  [
    'button-no-click',
    'feel',
    'Does the button fail to click?',
    'It gives no click, sits deep, hangs or does not spring back.',
    ['button_no_click'],
  ],
  [
    'plug-will-not-fit',
    'see',
    'Is there a plug that fits none of the headers?',
    'A plug has more holes than there are posts, or its key is elsewhere.',
    ['lead_does_not_fit'],
  ],
  [
    'lead-too-short',
    'see',
    'Is a lead too short for its header?',
    'The lead is taut, or does not reach.',
    ['lead_too_short'],
  ],
  [
    'header-covered',
    'see',
    'Does a part cover a socket, so that its plug cannot go in?',
    'A cooler, a fan or a card is in the way of a plug.',
    ['header_blocked'],
  ],
  [
    'rear-port-blocked',
    'see',
    'Is there metal in one of the rear sockets?',
    'A tongue of the rear plate has slipped into the socket.',
    ['rear_port_obstructed'],
  ],
  [
    'loose-part',
    'see',
    'Has a card, a module or a cooler come out of its seat?',
    'It sits askew, or moves under a finger.',
    ['parts_unseated'],
  ],
  [
    'rattle',
    'hear',
    'Does something rattle when the case is tilted, unplugged?',
    'Something small and hard slides about.',
    ['rattle'],
  ],
  [
    'melted-plug',
    'see',
    'Is a plug or a wire melted, brown or brittle?',
    'Plastic has run, or the holes are brown.',
    ['melted_plug'],
    'stop',
  ],
  [
    'tingle',
    'feel',
    'Has someone felt a tingle on the metal of the case?',
    'A prickling on bare skin at the case or a socket.',
    ['shock_tingle'],
    'stop',
  ],
  [
    'breaker-trips',
    'see',
    'Does the breaker of the room go when mains is switched on?',
    'The circuit of the room is dead at once.',
    ['breaker_trips'],
    'stop',
  ],
  ['spark', 'see', 'Was there a spark?', 'A flash at a plug, a socket or a pin.', ['spark'], 'stop'],
  [
    'starts-on-mains',
    'see',
    'Does it start by itself as soon as mains comes on?',
    'Fans turn the moment the rear switch is closed.',
    ['starts_by_itself_on_ac'],
  ],
  [
    'no-start-on-mains',
    'see',
    'Does it stay off when mains returns, though it is set to start?',
    'After a cut in the mains it has to be started by hand.',
    ['no_autostart_after_mains'],
  ],
]);

/** Those of them that only show once mains is on. */
export const WITH_MAINS_ON: ReadonlySet<string> = new Set<(typeof BEFORE_PRESS)[number]['id']>([
  'standby-light',
  'no-standby-light',
  'breaker-trips',
  'starts-on-mains',
  'no-start-on-mains',
]);
