import { BuildForm } from '../build-form';
import { BoardForm } from './board-form';
import { PlaceLine } from './place-line';
import { PlanPane } from './plan-pane';
import { PlanSaid } from './plan-said';
import { PlanTools } from './plan-tools';
import './plan.css';

/** The board as its manual draws it: size and holes, connectors placed and turned, names and notes below. */
export function PlanPage() {
  return (
    <div className="plan">
      <div className="plan-board">
        <PlanTools />
        <PlanPane />
        <PlaceLine />
        <PlanSaid />
      </div>
      <div className="plan-forms">
        <BoardForm />
        <BuildForm />
      </div>
    </div>
  );
}
