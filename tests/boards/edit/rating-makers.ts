import { leadsOf, unitsOf } from '../../../boards/document/lookup';
import { LINE_RATES_GBPS } from '../../../boards/document/rating';
import { fanRatingFor, ratingFor } from '../arbitrary-rating';
import type { Makers } from './situation';

/** The rows of commands about what manuals and labels say, and about places that were chosen. */
export const RATING_MAKERS: Makers<
  'rate-connector' | 'rate-fan' | 'rate-unit' | 'list-drive-places' | 'choose-place'
> = {
  'rate-connector': ({ build, dice }) => {
    const connector = dice.pick(build.board.connectors);
    return connector && { connector: connector.id, rating: dice.oneIn(4) ? null : ratingFor(dice) };
  },
  'rate-fan': ({ build, dice }) => {
    const fans = leadsOf(build).flatMap(({ id, parts }) =>
      parts
        .filter(({ kind }) => kind === 'fan' || dice.oneIn(20))
        .map((part) => ({ lead: id, part: part.id })),
    );
    const fan = dice.pick(fans);
    return (
      fan && {
        ...fan,
        fan: dice.oneIn(4) ? null : fanRatingFor(dice),
      }
    );
  },
  'rate-unit': ({ build, dice }) => {
    const rated = unitsOf(build).filter(({ kind }) => kind === 'drive' || kind === 'hub' || dice.oneIn(20));
    const unit = dice.pick(rated);
    if (unit === undefined) return undefined;
    const fedBy = dice.pick(['header', 'supply'] as const) ?? 'header';
    const drive = { lineRateGbps: dice.pick(LINE_RATES_GBPS) ?? 6, startAmps: 1 + dice.below(3) };
    const hub = { fedBy, amps: 1 + dice.below(3) };
    const known = !dice.oneIn(4);
    return {
      unit: unit.id,
      drive: known && unit.kind !== 'hub' ? drive : null,
      hub: known && unit.kind === 'hub' ? hub : null,
    };
  },
  'list-drive-places': ({ dice, text }) => ({
    places: Array.from({ length: dice.below(3) }, (_, at) => ({
      id: dice.oneIn(20) ? 'place-0' : `place-${at}`,
      name: text,
    })),
  }),
  'choose-place': ({ build, dice }) => {
    const of = dice.pick([...leadsOf(build), ...unitsOf(build)])?.id;
    const on = dice.pick(build.board.connectors)?.id ?? null;
    if (of === undefined) return undefined;
    return {
      kind: dice.pick(['port', 'header', 'branch'] as const) ?? 'port',
      of,
      on: dice.oneIn(3) ? null : on,
    };
  },
};
