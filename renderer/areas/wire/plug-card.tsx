import { Grip, ListTree, Repeat, RotateCw, Undo2 } from 'lucide-react';
import { leadOf, type PlugRef, plugOf, seatOf } from '../../../boards/document/lookup';
import { doCommand } from '../../do-command';
import { Button } from '../../look/button';
import { chosenPlug } from '../../store/session';
import { markWords, plugTitle, plugWords } from '../../words/plug-words';
import { seatTurnWords, seatWords } from '../../words/seat-words';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { carry } from './placing/hand';
import { PlugDrawing } from './plug-drawing';
import { WireChips } from './wire-chips';

/** The chosen plug, close to: what it looks like, where it is, what can be done with it. */
export function PlugCard() {
  const plug = useSession(({ selection }) => chosenPlug(selection));
  return (
    <section className="plug-card" aria-label="Chosen lead">
      {plug ? (
        <Chosen plug={plug} />
      ) : (
        <p className="soft small">Choose a lead to see its plug and what can be done with it.</p>
      )}
    </section>
  );
}

function Chosen({ plug: ref }: { readonly plug: PlugRef }) {
  const build = useBuild();
  const lead = leadOf(build, ref.lead);
  const plug = plugOf(build, ref);
  if (!lead || !plug) return null;
  const seat = seatOf(build, ref);
  const turn = seat ? seatTurnWords(build, seat) : '';
  return (
    <>
      <div className="plug-card-head">
        <div>
          <h2 className="mono">{plugTitle(lead, plug)}</h2>
          <p className="soft small">
            {[plugWords(lead, plug), markWords(plug)].filter((words) => words !== '').join(', ')}
          </p>
          {seat && (
            <p className="small">
              On {seatWords(build, seat)}
              {turn === '' ? '' : `, ${turn}`}
            </p>
          )}
        </div>
        <PlugDrawing lead={lead} plug={plug} cellPx={plug.grid.cols > 5 ? 14 : 20} />
      </div>
      <WireChips lead={lead} plug={plug} />
      <Doings plug={ref} seated={seat !== undefined} aside={lead.setAside === true} />
    </>
  );
}

interface DoingsProps {
  readonly plug: PlugRef;
  readonly seated: boolean;
  readonly aside: boolean;
}

function Doings({ plug, seated, aside }: DoingsProps) {
  const workbench = useWorkbench();
  const { lead } = plug;
  return (
    <div className="plug-card-doings">
      <Button kind={seated ? 'plain' : 'main'} onPress={() => carry(workbench, plug)}>
        <Grip size={16} aria-hidden="true" />
        {seated ? 'Move' : 'Place'}
      </Button>
      <Button onPress={() => workbench.session.getState().openDialog({ kind: 'places', plug })}>
        <ListTree size={16} aria-hidden="true" />
        Places
      </Button>
      {seated && (
        <>
          <Button onPress={() => doCommand(workbench, { name: 'turn-plug', args: { ...plug, by: 90 } })}>
            <RotateCw size={16} aria-hidden="true" />
            Turn
          </Button>
          <Button onPress={() => doCommand(workbench, { name: 'turn-plug', args: { ...plug, by: 180 } })}>
            <Repeat size={16} aria-hidden="true" />
            Turn round
          </Button>
          <Button onPress={() => doCommand(workbench, { name: 'unseat-plug', args: plug })}>
            <Undo2 size={16} aria-hidden="true" />
            Take off
          </Button>
        </>
      )}
      {!seated && (
        <Button
          onPress={() => doCommand(workbench, { name: 'set-lead-aside', args: { lead, aside: !aside } })}
        >
          {aside ? 'Back to the shelf' : 'Set aside'}
        </Button>
      )}
    </div>
  );
}
