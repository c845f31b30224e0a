import type { Build, Seat } from '../../document/build';
import type { Lead, Part } from '../../document/lead';
import { leadOf, leadsOf } from '../../document/lookup';
import type { PartKind } from '../../signals/part-kind';
import { partKindOf } from '../../signals/part-kinds';
import { isLed, isSwitch } from '../../signals/part-traits';
import type { Job } from '../../signals/signal';
import type { CauseId } from './causes';
import { type Consequences, consequencesKept } from './consequences-kept';
import { type Fault, way } from './fault';
import { type Slip, type SlipKind, slipId, slipsOf } from './slips';

type Condition = NonNullable<Part['condition']>;

/** What a wrong seating is called and how often it is met in all, by what the lead is for. Common practice, no source. */
interface SlipRow {
  readonly cause: CauseId;
  readonly weight: number;
}

type SlipTable = Readonly<Record<SlipKind, SlipRow>>;

function row(cause: CauseId, weight: number): SlipRow {
  return { cause, weight };
}

const SWITCH: SlipTable = {
  off: row('panel-lead-missing', 2),
  turned: row('panel-lead-miswire', 0.1),
  shifted: row('panel-lead-miswire', 2.5),
  elsewhere: row('panel-lead-miswire', 0.7),
  exchanged: row('panel-lead-miswire', 1.2),
};

const LIGHT: SlipTable = {
  off: row('led-wiring', 0.6),
  turned: row('led-polarity', 2.5),
  shifted: row('led-wiring', 0.8),
  elsewhere: row('led-wiring', 0.3),
  exchanged: row('led-wiring', 0.5),
};

const SPEAKER: SlipTable = {
  off: row('speaker', 1),
  turned: row('speaker', 0.1),
  shifted: row('speaker', 0.6),
  elsewhere: row('speaker', 0.4),
  exchanged: row('speaker', 0.2),
};

const USB: SlipTable = {
  off: row('panel-lead-missing', 0.5),
  turned: row('usb-miswire', 1),
  shifted: row('usb-miswire', 1),
  elsewhere: row('wrong-header-same-shape', 1.3),
  exchanged: row('wrong-header-same-shape', 0.5),
};

const AUDIO: SlipTable = {
  off: row('panel-lead-missing', 0.5),
  turned: row('audio-miswire', 1),
  shifted: row('audio-miswire', 1.5),
  elsewhere: row('wrong-header-same-shape', 0.8),
  exchanged: row('wrong-header-same-shape', 0.3),
};

const FAN: SlipTable = {
  off: row('fan-header', 1),
  turned: row('fan-wiring', 0.2),
  shifted: row('off-by-one', 0.5),
  elsewhere: row('fan-header', 0.7),
  exchanged: row('fan-header', 0.3),
};

const CAP: SlipTable = {
  off: row('jumper-missing', 0.7),
  turned: row('jumper-wrong', 0.01),
  shifted: row('jumper-wrong', 1),
  elsewhere: row('jumper-wrong', 0.2),
  exchanged: row('jumper-wrong', 0.1),
};

const CASE_OPEN: SlipTable = {
  off: row('intrusion', 0.3),
  turned: row('intrusion', 0.01),
  shifted: row('intrusion', 0.2),
  elsewhere: row('intrusion', 0.1),
  exchanged: row('intrusion', 0.05),
};

const TABLE_OF: Partial<Readonly<Record<Job, SlipTable>>> = {
  'power-switch': SWITCH,
  'reset-switch': SWITCH,
  'key-lock': SWITCH,
  'power-led': LIGHT,
  'drive-led': LIGHT,
  'message-led': LIGHT,
  speaker: SPEAKER,
  'case-open': CASE_OPEN,
  'clear-settings': CAP,
  usb2: USB,
  usb3: USB,
  'usb-c': USB,
  ieee1394: USB,
  'hd-audio': AUDIO,
  'ac97-audio': AUDIO,
  fan: FAN,
};

/** Every fault that a build's own seats and switches may have: generated, none typed in; the switches last. */
export function wiringFaults(build: Build): readonly Fault[] {
  const consequences = consequencesKept(build);
  return [
    ...build.seats.flatMap((seat) => seatingFaults(build, seat, consequences)),
    ...switchFaults(build, consequences),
  ];
}

/** Each wrong seating is a fault; those of one kind share the weight of the kind. */
function seatingFaults(build: Build, seat: Seat, consequences: Consequences): readonly Fault[] {
  const part = leadOf(build, seat.lead)?.parts[0];
  const table = part && TABLE_OF[partKindOf(part.kind).job];
  if (!part || !table) return [];
  const slips = slipsOf(build, seat).filter((slip) => !isHarmless(part, slip));
  const count = (kind: SlipKind) => slips.filter((slip) => slip.kind === kind).length;
  const shares = new Map([...new Set(slips.map(({ kind }) => kind))].map((kind) => [kind, count(kind)]));
  return slips.map((slip): Fault => {
    const { cause, weight } = table[slip.kind];
    return {
      id: slipId(seat, slip),
      cause,
      name: slip.name,
      weight: weight / (shares.get(slip.kind) ?? 1),
      lead: seat.lead,
      ...(slip.seat ? { seat: slip.seat } : { off: { lead: seat.lead, plug: seat.plug } }),
      ways: consequences.ofSeats(slip.leads, slip.build.seats),
    };
  });
}

/** A switch or a cap does not mind which way round it is. */
function isHarmless(part: Part, { kind }: Slip): boolean {
  const { exchangeable, terminals }: PartKind = partKindOf(part.kind);
  return kind === 'turned' && exchangeable?.length === terminals.length;
}

/** Stuck, broken and worn switches, and lights that are broken. */
function switchFaults(build: Build, consequences: Consequences): readonly Fault[] {
  return leadsOf(build).flatMap((lead) =>
    lead.parts.flatMap((part): readonly Fault[] => {
      const kind = partKindOf(part.kind);
      if (isLed(kind)) return [deadLight(lead.id, lead.name, part)];
      if (!isSwitch(kind) || (kind.job !== 'power-switch' && kind.job !== 'reset-switch')) return [];
      const input = kind.job === 'power-switch' ? 'power' : 'reset';
      const weight = input === 'power' ? 1 : 0.5;
      const head = { lead: lead.id };
      const withPart = (condition: Condition) => consequences.ofLead(withCondition(lead, part.id, condition));
      const sharing = (share: number, ways: readonly ReturnType<typeof way>[], click: number) =>
        ways.map((each) =>
          way(each.share * share, each.machine, { ...each.signs, 'button-no-click': click }),
        );
      return [
        {
          ...head,
          id: `${lead.id}/${part.id}/stuck`,
          cause: 'switch-stuck',
          name: `The button of ${lead.name} stays pressed.`,
          weight: 5 * weight,
          ways: [
            ...sharing(3, withPart('stuck'), 0.4).map(({ share, machine, signs }) =>
              way(share, machine, { ...signs, 'only-out-of-case': 0.4 }),
            ),
            // Stuck only now and then.
            way(1, { [input]: { rest: 'now-and-then', pressed: 'held' } }, { 'button-no-click': 0.3 }),
          ],
        },
        {
          ...head,
          id: `${lead.id}/${part.id}/broken`,
          cause: 'switch-broken',
          name: `The button of ${lead.name} no longer closes.`,
          weight: 6 * weight,
          ways: [
            ...sharing(2, withPart('broken'), 0.45),
            way(1, { [input]: { rest: 'free', pressed: 'now-and-then' } }, { 'button-no-click': 0.3 }),
          ],
        },
      ];
    }),
  );
}

function deadLight(lead: string, name: string, part: Part): Fault {
  const light = part.kind === 'drive-led' ? ('drive-light-dark' as const) : ('power-light-dark' as const);
  const flickers = part.kind === 'drive-led' ? {} : ({ 'power-light-flickers': 0.1 } as const);
  const ways = [way(1, {}, { [light]: 0.9, ...flickers })];
  return {
    id: `${lead}/${part.id}/dead`,
    cause: 'led-wiring',
    name: `The light of ${name} is dead.`,
    weight: 0.5,
    lead,
    ways,
  };
}

function withCondition(lead: Lead, part: string, condition: Condition): Lead {
  return { ...lead, parts: lead.parts.map((one) => (one.id === part ? { ...one, condition } : one)) };
}
