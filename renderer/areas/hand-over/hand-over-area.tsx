import { FindingsPanel } from '../wire/findings-panel';
import { StepPage } from './step-page';
import { StepsShelf } from './steps-shelf';
import '../wire/shelf.css';
import '../wire/wire.css';
import './hand-over.css';

/** The work at the bench in its order: what the machine has and the steps, the step, what stands against power. */
export function HandOverArea() {
  return (
    <div className="area wire-area hand-over-area">
      <StepsShelf />
      <StepPage />
      <FindingsPanel />
    </div>
  );
}
