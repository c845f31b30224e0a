import type { Lead } from '../../document/lead';
import { leadsOf, type PinRef } from '../../document/lookup';
import { partKindOf } from '../../signals/part-kinds';
import type { CheckContext } from '../context';
import type { FindingOf } from '../finding';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';
import { pairsOf } from '../seated-part';

const JOB = 'power-switch';

/**
 * A machine whose board has power switch pins needs a switch on them to be started.
 *
 * Good: the power switch lead on its pins, or set aside on purpose.
 * Bad: it lies beside the board, or one of its two single plugs does: nothing would happen on a press. No lead of
 * the case has one: a doubt.
 */
export const requiredLeadMissing: Rule<'required-lead-missing'> = {
  id: 'required-lead-missing',
  source: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2.4',
  explains: ['lead-left-over', 'place-taken', 'no-place'],
  check: (context): readonly FindingOf<'required-lead-missing'>[] => {
    const inputs = inputsOf(context);
    const leads = leadsOf(context.build).filter(hasPowerSwitch);
    const seated = context.parts.filter(({ kind }) => kind.job === JOB);
    if (inputs.length === 0 || seated.some((part) => pairsOf(part).length > 0)) return [];
    if (leads.some(({ setAside }) => setAside)) return [];
    const plug = context.loose.find(({ lead }) => leads.includes(lead))?.ref;
    // It sits, with a wire over no pin: contact-off-pins tells that.
    if (plug === undefined && seated.length > 0) return [];
    return [
      {
        code: 'required-lead-missing',
        severity: plug ? 'fault' : 'doubt',
        leads: plug ? [plug.lead] : [],
        pins: inputs,
        data: { job: JOB, ...(plug && { plug }) },
        remedies: plug ? remediesFor(context, plug) : [],
      },
    ];
  },
};

function hasPowerSwitch({ parts }: Lead): boolean {
  return parts.some(({ kind }) => partKindOf(kind).job === JOB);
}

function inputsOf({ build }: CheckContext): readonly PinRef[] {
  return build.board.connectors.flatMap((connector) =>
    connector.pins
      .filter(({ signal }) => signal === 'power-switch-input')
      .map(({ pin }) => ({ connector: connector.id, pin })),
  );
}
