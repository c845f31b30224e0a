import type { ReactNode } from 'react';
import type { Build } from '../../../boards/document/build';
import type { Pin } from '../../../boards/document/connector';
import { anyConnectorOf } from '../../../boards/document/lookup';
import { connectorName } from '../../../boards/document/names';
import { pinText } from '../../../boards/drawing/pin-text';
import { signalName } from '../../../boards/findings/words/names';
import type { SeatedPlug } from '../../../boards/fit/seated-plug';
import type { MeterStep } from '../../../boards/handover/meter/meter-steps';
import { expectedWords, otherwiseWords, probesWords } from '../../../boards/handover/meter/meter-words';
import { lyingAdvice } from '../../../boards/handover/pinout/lying-words';
import { type BenchStep, wiresOf } from '../../../boards/handover/steps/bench-steps';
import { type CloseUp, closeUpOfPlug, closeUpsOfProbes } from '../../../boards/handover/steps/close-up';
import { lyingLines, METER_HOW, stepWords } from '../../../boards/handover/steps/step-words';
import { keyed } from '../../look/keyed';
import { colourWords } from '../../words/plug-words';
import { CloseUpDrawing } from './close-up-drawing';
import { StandoffDrawing } from './standoff-drawing';

interface StepBodyProps {
  readonly build: Build;
  readonly step: BenchStep;
  /** For the way the board lies; none in large letters. */
  readonly tools?: ReactNode;
  readonly large?: boolean;
}

/** How a step is done: its lines, or the header from near by with wires or probes. */
export function StepBody({ build, step, tools, large = false }: StepBodyProps) {
  switch (step.kind) {
    case 'chore':
      return <Lines build={build} step={step} />;
    case 'standoffs':
      // From two metres the letters of the drawing would be too small: the lines say the same.
      return large ? (
        <Lines build={build} step={step} />
      ) : (
        <div className="step-near">
          <StandoffDrawing build={build} known={step.known} />
          <Lines build={build} step={step} />
        </div>
      );
    case 'plug':
      return <PlugBody build={build} seated={step.seated} tools={tools} large={large} />;
    case 'meter':
      return <MeterBody build={build} step={step.step} tools={tools} large={large} />;
  }
}

function Lines({ build, step }: Pick<StepBodyProps, 'build' | 'step'>) {
  return (
    <ul className="step-lines">
      {keyed(stepWords(build, step).lines).map(([key, line]) => (
        <li key={key}>{line}</li>
      ))}
    </ul>
  );
}

interface PlugBodyProps extends Omit<StepBodyProps, 'step' | 'large'> {
  readonly seated: SeatedPlug;
  readonly large: boolean;
}

function PlugBody({ build, seated, tools, large }: PlugBodyProps) {
  const closeUp = closeUpOfPlug(build, seated, !large);
  const name = connectorName(build, seated.connector.id);
  return (
    <div className={nearClass([closeUp])}>
      <Near build={build} closeUps={[closeUp]} tools={tools} large={large} what="with the plug on it" />
      <div className="step-side">
        <table className="step-table">
          <caption className="aside-hidden">Which wire goes to which pin of {name}</caption>
          <thead>
            <tr>
              <th scope="col">Wire</th>
              <th scope="col">Pin</th>
              <th scope="col">Name</th>
            </tr>
          </thead>
          <tbody>
            {wiresOf(seated).map(({ hole, wire, pin }) => (
              <tr key={`${hole} ${wire.from} ${wire.to}`}>
                <td>
                  <span className="step-wire">
                    <span className="wire-chip" data-wire={wire.colour} data-stripe={wire.stripe} />
                    {colourWords(wire)}
                  </span>
                </td>
                <td className="mono">{pin?.pin ?? '–'}</td>
                <td>{pin ? (large ? pinText(pin) : pinWords(pin)) : 'over no pin'}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <ul className="step-lines">
          {keyed(lyingLines(seated)).map(([key, line]) => (
            <li key={key}>{line}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}

/** "FP PWR/SLP, power LED +": the manual's name, and what the pin does where that does not say it. */
function pinWords(pin: Pin): string {
  const name = pinText(pin);
  const does = pin.signal === undefined ? name : signalName(pin.signal);
  return name.toLowerCase() === does.toLowerCase() ? name : `${name}, ${does}`;
}

interface MeterBodyProps extends Omit<StepBodyProps, 'step' | 'large'> {
  readonly step: MeterStep;
  readonly large: boolean;
}

function MeterBody({ build, step, tools, large }: MeterBodyProps) {
  const [first] = step.readings;
  if (first === undefined) return null;
  const closeUps = closeUpsOfProbes(build, first);
  return (
    <div className={nearClass(closeUps)}>
      <Near
        build={build}
        closeUps={closeUps}
        tools={tools}
        large={large}
        what={
          first.mode === 'diode'
            ? 'with the red probe in a full ring and the black one in a broken ring'
            : 'with the two probes in rings'
        }
      />
      <ol className="step-side step-readings">
        <li>{METER_HOW}</li>
        {step.readings.map((reading) => (
          <li key={reading.when}>
            <p>{probesWords(build, reading)}:</p>
            <p className="step-expected">{expectedWords(reading)}</p>
            {keyed(otherwiseWords(reading)).map(([key, line]) => (
              <p key={key} className="soft">
                {line}
              </p>
            ))}
          </li>
        ))}
        {step.kind === 'lamp' && (
          <li className="soft">
            The drawing shows the first reading; for the second the probes change places.
          </li>
        )}
      </ol>
    </div>
  );
}

/** More than six positions wide, and the words stand below the drawing rather than beside it. */
const WIDE_MM = 17;

function nearClass(closeUps: readonly CloseUp[]): string {
  const wide = closeUps.some(({ window: { width } }) => width > WIDE_MM);
  return wide ? 'step-near step-near-wide' : 'step-near';
}

interface NearProps {
  readonly build: Build;
  readonly closeUps: readonly CloseUp[];
  readonly tools: ReactNode;
  readonly large: boolean;
  readonly what: string;
}

/** The headers as they lie, and how that is. */
function Near({ build, closeUps, tools, large, what }: NearProps) {
  return (
    <figure className="step-figure">
      {closeUps.map((closeUp) => (
        <CloseUpDrawing
          key={closeUp.connector}
          closeUp={closeUp}
          label={`${connectorName(build, closeUp.connector)} as it lies, ${what}`}
          large={large}
        />
      ))}
      <figcaption className="step-lying soft">
        <span>
          {closeUps.map(({ connector }) => titleOf(build, connector)).join('; ')}. {lyingAdvice(build.view)}
          {closeUps.some(({ goesOn }) => goesOn.length > 0) && ' The header goes on past the broken line.'}
        </span>
        {tools && <span className="step-tools">{tools}</span>}
      </figcaption>
    </figure>
  );
}

/** "PANEL, Front panel": its print, and what it is. */
function titleOf(build: Build, id: string): string {
  const connector = anyConnectorOf(build, id);
  const name = connectorName(build, id);
  return connector && connector.title !== name ? `${name}, ${connector.title}` : name;
}
