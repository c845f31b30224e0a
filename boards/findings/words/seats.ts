import { capital } from '../../base/capital';
import { listed } from '../../base/listed';
import type { Build } from '../../document/build';
import type { Side } from '../../document/connector';
import { anyConnectorOf, unitWith } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { overhangWords, refusalWords } from '../../fit/fit-words';
import { turnedSide } from '../../fit/geometry';
import type { Unsure } from '../finding-data';
import type { WordsFor } from './finding-words';
import { pinList, pinsOf, plugText } from './names';

const UNSURE: Readonly<Record<Unsure, string>> = {
  unknown: 'nobody has written down what it does',
  guessed: 'what it does was guessed',
  'low-confidence': 'what it does is from one source or from memory',
  'sources-disagree': 'another source says something else of it',
};

/** How plugs sit: what geometry alone tells, and what is not surely known of the pins. */
export const SEAT_WORDS: WordsFor<
  'seat-impossible' | 'contact-off-pins' | 'overhang' | 'pin-unsure' | 'shifted'
> = {
  'seat-impossible': ({ data: { plug, connector, refusals } }, build) => ({
    title: `${plugText(build, plug)} cannot sit there.`,
    reason: `On ${connectorName(build, connector)}: ${refusals.map((each) => refusalWords(each, build)).join(' ')}`,
  }),

  'contact-off-pins': ({ data: { plug, connector, contacts } }, build) => {
    const each = contacts.map(({ hole, pin }) =>
      pin === undefined
        ? `hole\u00a0${hole} is past the edge`
        : `hole\u00a0${hole} is over position\u00a0${pin}, where no pin stands`,
    );
    return {
      title: `${contacts.length === 1 ? 'A wire' : 'Wires'} of ${plugText(build, plug)} would touch no pin.`,
      reason: `On ${connectorName(build, connector)} ${listed(each)}.`,
    };
  },

  overhang: ({ data: { plug, connector, holes } }, build) => ({
    title: `${plugText(build, plug)} hangs over the edge of ${connectorName(build, connector)}.`,
    reason: `${overhangWords(holes)} Every wire that it needs is on a pin.`,
  }),

  'pin-unsure': ({ data: { plug, connector, unsure } }, build) => {
    const reasons = [...new Set(unsure.map(({ why }) => why))].map((why) => {
      const labels = unsure.filter((each) => each.why === why).map(({ pin }) => pin);
      const sentence =
        labels.length === 1
          ? UNSURE[why]
          : UNSURE[why].replace('it does', 'they do').replace('of it', 'of them');
      return `${capital(pinList(labels))}: ${sentence}.`;
    });
    return {
      title: `${plugText(build, plug)} is on pins of ${connectorName(build, connector)} that are not surely known.`,
      reason: `${reasons.join(' ')} Look into ${unitWith(build, connector) ? 'its maker’s sheet' : 'the board’s manual'}, or measure, before power.`,
    };
  },

  shifted: ({ data: { plug, connector, toward }, pins }, build) => ({
    title: `${plugText(build, plug)} is one pin off.`,
    reason: `It is on ${pinsOf(build, pins)}. Its place is one ${isAlong(toward) ? 'column' : 'row'} ${inView(build, connector, toward)}.`,
  }),
};

function isAlong(side: Side): boolean {
  return side === 'left' || side === 'right';
}

const DIRECTIONS: Readonly<Record<Side, string>> = {
  top: 'up',
  right: 'to the right',
  bottom: 'down',
  left: 'to the left',
};

const AS_DESCRIBED: Build['view'] = { turn: 0, mirrored: false };

/** A direction on the unturned connector, as the board lies in front of the person. */
function inView(build: Build, connector: string, side: Side): string {
  const turn = anyConnectorOf(build, connector)?.place.turn ?? 0;
  // Only the board is turned and mirrored with the view; a unit is drawn as it is described.
  const view = unitWith(build, connector) ? AS_DESCRIBED : build.view;
  const onBoard = turnedSide(side, turn);
  // As it is drawn: the mirror comes first, and a turn of the view is then clockwise before the eyes.
  const mirrored = view.mirrored && isAlong(onBoard) ? turnedSide(onBoard, 180) : onBoard;
  return DIRECTIONS[turnedSide(mirrored, view.turn)];
}
