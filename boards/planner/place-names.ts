import type { Lead } from '../document/lead';
import type { LaidPlug } from '../fit/laid-plug';

/** Words that say where in a machine something belongs, by what they mean. Common practice, no source. */
const PLACE_WORDS: Readonly<Record<string, string>> = {
  front: 'front',
  rear: 'rear',
  back: 'rear',
  top: 'top',
  roof: 'top',
  bottom: 'bottom',
  side: 'side',
  cpu: 'cpu',
  processor: 'cpu',
  pump: 'pump',
};

/** Whether lead and header both name a place and not the same: a rear fan on the header of the front fan. */
export function isMisnamed(lead: Lead, { connector, plug }: LaidPlug): boolean {
  const ofLead = placesIn(`${lead.name} ${plug.print}`);
  const ofHeader = placesIn(`${connector.print} ${connector.title}`);
  return ofLead.size > 0 && ofHeader.size > 0 && ![...ofLead].some((place) => ofHeader.has(place));
}

function placesIn(text: string): ReadonlySet<string> {
  const words = text.toLowerCase().split(/[^a-z]+/);
  return new Set(
    words.flatMap((word) => (Object.hasOwn(PLACE_WORDS, word) ? (PLACE_WORDS[word] ?? []) : [])),
  );
}
