import { listed } from '../../base/listed';
import { circuitOf } from '../../circuit/circuit';
import { USUAL } from '../../circuit/corner';
import { partDeviceId } from '../../circuit/elements';
import type { Button, MachineState } from '../../circuit/machine-state';
import type { Build } from '../../document/build';
import type { Lead, Part } from '../../document/lead';
import { leadsOf } from '../../document/lookup';
import { connectorName, leadName } from '../../document/names';
import { type Joint, jointsOf } from '../../fit/joints';
import { partKindOf } from '../../signals/part-kinds';
import { type Story, type StoryCode, storyOf } from '../story';
import type { Said } from './finding-words';
import { pinWithJob } from './names';
import { ampsText, voltsSpanText } from './numbers';

const TITLES: Readonly<Record<StoryCode, string>> = {
  unplugged: 'Nothing can happen: the machine is unplugged.',
  waits: 'The machine waits for its button.',
  starts: 'The machine starts.',
  'starts-by-reset': 'The reset button starts the machine.',
  'starts-by-itself': 'The machine starts by itself, and goes off again after some seconds.',
  'press-does-nothing': 'Nothing happens.',
  sleeps: 'The machine sleeps.',
  wakes: 'The machine wakes.',
  'wakes-by-reset': 'The reset button wakes the machine.',
  'wakes-by-itself': 'The machine wakes by itself, and goes off after some seconds.',
  runs: 'The machine runs.',
  'held-in-reset': 'The machine stays in reset: fans may turn, and nothing starts.',
  restarts: 'The machine restarts when the button is let go.',
  'restarts-by-power': 'The power button restarts the machine.',
  'goes-off': 'The machine goes off: by its system after a short press, by force after about four seconds.',
  'goes-off-by-reset': 'The reset button switches the machine off.',
  'goes-off-by-itself': 'The machine goes off after some seconds, as if the button were held.',
  'running-press-does-nothing': 'Nothing happens, and the machine runs on.',
};

/** What would happen in a machine state, and why, from the levels that the circuit gives. */
export function storyWords(build: Build, state: MachineState): Said {
  const story = storyOf(build, state);
  return {
    title: story.certain ? TITLES[story.code] : `On some boards: ${lowerFirst(TITLES[story.code])}`,
    reason: [...state.held.map((button) => buttonWords(build, state, button)), inputWords(story)]
      .filter(Boolean)
      .join(' '),
  };
}

function lowerFirst(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}

const INPUT: Readonly<Record<Button, string>> = { power: 'power switch input', reset: 'reset input' };

function inputWords({ code, volts }: Story): string {
  if (code === 'unplugged') return '';
  const inputs = (['power', 'reset'] as const).map((button) => {
    const span = volts[button];
    return span
      ? `the ${INPUT[button]} is at ${voltsSpanText(span)}`
      : `nothing touches the ${INPUT[button]}`;
  });
  const text = listed(inputs);
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}

/** Where the contacts of the pressed button are, and what flows through it. */
function buttonWords(build: Build, state: MachineState, button: Button): string {
  const job = `${button}-switch`;
  const switches = leadsOf(build).flatMap((lead) =>
    lead.parts.filter((part) => partKindOf(part.kind).job === job).map((part) => ({ lead, part })),
  );
  if (switches.length === 0) return `None of the leads has a ${button} button.`;
  return switches.map(({ lead, part }) => oneButton(build, state, button, lead, part)).join(' ');
}

function oneButton(build: Build, state: MachineState, button: Button, lead: Lead, part: Part): string {
  const contacts = jointsOf(build).filter((joint) => joint.lead === lead && joint.part === part);
  if (contacts.length === 0)
    return `The ${button} button is on the shelf: ${leadName(build, lead.id)} touches no pin.`;
  const element = partDeviceId(lead.id, part.id);
  const amps = Math.abs(circuitOf(build).amps(element, element, state, USUAL));
  return `The ${button} button joins ${listed(contacts.map((joint) => contactWords(build, joint)))}; ${ampsText(amps)} flows through it.`;
}

function contactWords(build: Build, { connector, pin, landing }: Joint): string {
  const header = connectorName(build, connector.id);
  if (pin) return `${pinWithJob(build, { connector: connector.id, pin: pin.pin })} of ${header}`;
  return landing.pin ? `a gap of ${header}` : `nothing beside ${header}`;
}
