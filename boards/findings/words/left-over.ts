import { listed } from '../../base/listed';
import { jobName } from '../../signals/job-names';
import type { WordsFor } from './finding-words';
import { pinsOf, plugText } from './names';

/** Leads that sit nowhere. */
export const LEFT_OVER_WORDS: WordsFor<
  'plug-too-wide' | 'required-lead-missing' | 'lead-left-over' | 'place-taken' | 'no-place'
> = {
  'plug-too-wide': ({ pins, data: { plug } }, build) => ({
    title: `${plugText(build, plug)} is too wide for its pins.`,
    reason: `Its contacts have an empty hole between them, and ${pinsOf(build, pins)} stand side by side.`,
  }),

  'required-lead-missing': ({ pins, data: { plug } }, build) => ({
    title: 'Nothing would happen on a press of the power button.',
    reason: plug
      ? `${plugText(build, plug)} is not on the board; its input is ${pinsOf(build, pins)}.`
      : `None of the leads has a power switch; its input is ${pinsOf(build, pins)}.`,
  }),

  'lead-left-over': ({ pins, data: { plug } }, build) => ({
    title: `${plugText(build, plug)} is left over.`,
    reason: `Its place is free: ${pinsOf(build, pins)}.`,
  }),

  'place-taken': ({ data: { plug, by } }, build) => ({
    title: `${plugText(build, plug)} is left over, and its place is taken.`,
    reason: `${listed(by.map((other) => plugText(build, other)))} ${by.length === 1 ? 'sits' : 'sit'} there.`,
  }),

  'no-place': ({ data: { plug, job } }, build) => ({
    title: `This board has no place for ${plugText(build, plug)}.`,
    reason: `No connector has ${jobName(job)} pins that this plug fits.`,
  }),
};
