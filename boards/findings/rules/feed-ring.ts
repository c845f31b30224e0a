import { Groups } from '../../circuit/islands';
import { unitOf, unitWith } from '../../document/lookup';
import { atPlug } from '../about';
import type { CheckContext, CheckedPlug } from '../context';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import { breakRingText } from '../words/remedies';

/**
 * Hubs and adapters hand power on in one direction: cables between them must not lead back to where they began.
 *
 * Good: a hub behind a hub.
 * Bad: two hubs each on an outlet of the other: neither is fed, or what feeds one is bypassed.
 */
export const feedRing: Rule<'feed-ring'> = {
  id: 'feed-ring',
  source: 'common practice, no source',
  explains: ['cable-on-one-unit'],
  check: (context): readonly FindingOf<'feed-ring'>[] => {
    const spans = spansOf(context);
    const joined = new Groups();
    const closing = spans.filter(({ hubs: [one, other] }) => !joined.join(one, other));
    return closing.map(({ hubs, plugs }) => {
      const ring = ringThrough(spans, hubs);
      const [first] = plugs;
      return {
        code: 'feed-ring',
        severity: 'fault',
        leads: [...new Set(ring.flatMap((span) => span.plugs.map(({ lead }) => lead.id)))],
        pins: plugs.flatMap((plug) => atPlug(plug).pins),
        data: {
          units: [...new Set(ring.flatMap((span) => span.hubs))],
          ...(first && { plug: first.ref }),
        },
        remedies: first
          ? [
              {
                text: breakRingText(
                  context.build,
                  first.ref,
                  unitOf(context.build, hubs[0])?.name ?? hubs[0],
                ),
                command: { name: 'unseat-plug', args: first.ref },
              },
            ]
          : [],
      };
    });
  },
};

/** A cable from one hub to another; both may be the same. */
interface Span {
  readonly hubs: readonly [string, string];
  readonly plugs: readonly CheckedPlug[];
}

function spansOf({ build, plugs }: CheckContext): readonly Span[] {
  const onHubs = new Map<string, { hub: string; plug: CheckedPlug }[]>();
  for (const plug of plugs) {
    const unit = unitWith(build, plug.connector.id);
    if (unit?.kind !== 'hub' || plug.lead.parts.length > 0) continue;
    onHubs.set(plug.lead.id, [...(onHubs.get(plug.lead.id) ?? []), { hub: unit.id, plug }]);
  }
  return [...onHubs.values()].flatMap(([first, ...others]) =>
    first === undefined
      ? []
      : others
          .filter(({ hub }) => hub !== first.hub)
          .map(({ hub, plug }): Span => ({ hubs: [first.hub, hub], plugs: [plug, first.plug] })),
  );
}

/** The spans of a ring that the last one closes: those on the way between its two hubs, found breadth first. */
function ringThrough(spans: readonly Span[], [from, to]: Span['hubs']): readonly Span[] {
  const closing = spans.find(({ hubs }) => hubs[0] === from && hubs[1] === to);
  const others = spans.filter((span) => span !== closing);
  const by = new Map<string, Span | undefined>([[from, undefined]]);
  for (const [hub] of by)
    for (const span of others) {
      const [one, other] = span.hubs;
      const next = one === hub ? other : other === hub ? one : undefined;
      if (next !== undefined && !by.has(next)) by.set(next, span);
    }
  const ring: Span[] = closing ? [closing] : [];
  for (let at = to; at !== from; ) {
    const span = by.get(at);
    if (span === undefined) break;
    ring.push(span);
    at = span.hubs[0] === at ? span.hubs[1] : span.hubs[0];
  }
  return ring;
}
