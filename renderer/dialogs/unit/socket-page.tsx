import { ListTree, Undo2 } from 'lucide-react';
import { analyse } from '../../../boards/analyse';
import type { Build, Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { type PinRef, pinOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import { pinWords } from '../../../boards/document/pin-words';
import type { Severity } from '../../../boards/findings/finding';
import { arrivalWords } from '../../../boards/findings/words/arrival';
import { seatedPlug } from '../../../boards/fit/seated-plug';
import { closeUpOfConnector, closeUpOfPlug } from '../../../boards/handover/steps/close-up';
import { CloseUpDrawing } from '../../areas/hand-over/close-up-drawing';
import { plugTitleOf, seatAt } from '../../areas/wire/placing/hand';
import { doCommand } from '../../do-command';
import { Button } from '../../look/button';
import { SeveritySign } from '../../look/severity-sign';
import { occupantWords } from '../../words/occupant-words';
import { seatWords } from '../../words/seat-words';
import { worst } from '../../words/severity-words';
import { socketName, socketWords } from '../../words/unit-words';
import { useWorkbench } from '../../workbench';
import { fittingPlugs, otherEnds, seatsOn } from './fitting-plugs';
import '../../areas/hand-over/hand-over.css';

interface SocketPageProps {
  readonly build: Build;
  readonly connector: Connector;
  readonly onClose: () => void;
}

/** A connector of a unit from near by: its picture, what sits there, what could, and what is on each pin. */
export function SocketPage({ build, connector, onClose }: SocketPageProps) {
  const { session } = useWorkbench();
  const [seat] = seatsOn(build, connector.id);
  const closeUp = seat
    ? closeUpOfPlug(build, seatedPlug(build, seat), true)
    : closeUpOfConnector(build, connector);
  const name = socketName(connector);
  return (
    <section className="unit-socket-page" aria-label={name}>
      <header>
        <h3 className="mono">{name}</h3>
        <p className="soft small">{socketWords(connector)}</p>
      </header>
      <div className="unit-picture">
        <CloseUpDrawing
          closeUp={closeUp}
          label={`${name}, ${seat ? `with ${plugTitleOf(build, seat)} on it` : 'free'}`}
          large={false}
        />
      </div>
      <Occupants build={build} connector={connector} />
      <Fitting build={build} connector={connector} />
      <Pins build={build} connector={connector} />
      <Button
        onPress={() => {
          const { select, showPage, goTo } = session.getState();
          select({ kind: 'connector', connector: connector.id });
          showPage('connector');
          goTo('document');
          onClose();
        }}
      >
        <ListTree size={16} aria-hidden="true" />
        Set down its pins
      </Button>
    </section>
  );
}

function Occupants({ build, connector }: { readonly build: Build; readonly connector: Connector }) {
  const workbench = useWorkbench();
  const seats = seatsOn(build, connector.id);
  if (seats.length === 0) return <p>Nothing is plugged in.</p>;
  return (
    <ul className="unit-plugs" aria-label="Plugged in">
      {seats.map((seat) => {
        const title = plugTitleOf(build, seat);
        return (
          <li key={`${seat.lead} ${seat.plug}`}>
            <span className="lead-row-words">
              <span className="lead-name">{title}</span>
              <span className="soft small">{farEndWords(build, seat)}</span>
            </span>
            <Button
              onPress={() =>
                doCommand(workbench, { name: 'unseat-plug', args: { lead: seat.lead, plug: seat.plug } })
              }
            >
              <Undo2 size={16} aria-hidden="true" />
              Take off
              <span className="aside-hidden"> {title}</span>
            </Button>
          </li>
        );
      })}
    </ul>
  );
}

function farEndWords(build: Build, seat: Seat): string {
  const ends = otherEnds(build, seat);
  return ends.length === 0
    ? 'its other end lies loose'
    : `leads to ${ends.map((end) => seatWords(build, end)).join('; ')}`;
}

function Fitting({ build, connector }: { readonly build: Build; readonly connector: Connector }) {
  const workbench = useWorkbench();
  const plugs = fittingPlugs(build, connector);
  if (plugs.length === 0) return null;
  return (
    <>
      <h4>Plugs that fit</h4>
      <ul className="unit-plugs" aria-label="Plugs that fit">
        {plugs.map(({ ref, seat, elsewhere }) => {
          const title = plugTitleOf(build, ref);
          return (
            <li key={`${ref.lead} ${ref.plug}`}>
              <span className="lead-row-words">
                <span className="lead-name">{title}</span>
                <span className="soft small">{farEndWords(build, seat)}</span>
              </span>
              <Button onPress={() => seatAt(workbench, seat)}>
                {elsewhere ? 'Move here' : 'Seat here'}
                <span className="aside-hidden"> {title}</span>
              </Button>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** The worst that is found at a pin, doubts and notes left out: they stand in the list of findings. */
function severityAt(build: Build, { connector, pin }: PinRef): Severity | null {
  const there = analyse(build).findings.filter(
    ({ severity, pins }) =>
      (severity === 'danger' || severity === 'fault') &&
      pins.some((each) => each.connector === connector && each.pin === pin),
  );
  return worst(there);
}

function Pins({ build, connector }: { readonly build: Build; readonly connector: Connector }) {
  const rows = gridIndex(connector.grid).positions.map(({ label }) => {
    const ref = { connector: connector.id, pin: label };
    const arriving = arrivalWords(build, ref);
    return {
      label,
      is: pinWords(pinOf(connector, label)),
      arriving,
      there: arriving || occupantWords(build, ref),
      severity: severityAt(build, ref),
    };
  });
  const takes = rows.some(({ arriving }) => arriving !== '');
  return (
    <table className="unit-pins">
      <caption className="aside-hidden">Pins of {socketName(connector)}</caption>
      <thead>
        <tr>
          <th scope="col">Pin</th>
          <th scope="col">Made for</th>
          <th scope="col">{takes ? 'Would get' : 'Wire'}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ label, is, there, severity }) => (
          <tr key={label}>
            <td className="mono">{label}</td>
            <td>{is}</td>
            <td>
              {severity && <SeveritySign severity={severity} spoken />}
              {there === '' ? '–' : there}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
