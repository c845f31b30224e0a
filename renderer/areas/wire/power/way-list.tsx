import { keyed } from '../../../look/keyed';
import type { ToldWay } from './chosen-way';
import { useChosenWay } from './use-chosen-way';

/** The way of the current through what is chosen, step by step. Its height stays, so that nothing jumps. */
export function WayList() {
  return (
    <section
      className="power-way"
      aria-label="Way of the current"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: a long way is scrolled with the arrow keys
      tabIndex={0}
    >
      <Chosen />
    </section>
  );
}

function Chosen() {
  const chosen = useChosenWay();
  if (!chosen)
    return (
      <p className="soft small">
        Choose a pin, a wire, a seated lead or a finding to see where its current goes.
      </p>
    );
  const { name, ways } = chosen;
  return (
    <>
      <p className="small power-way-name">{name}.</p>
      {ways.length === 0 && <p className="small">No current has a part in this.</p>}
      {ways.map((way) => (
        <Way key={way.when ?? ''} way={way} />
      ))}
    </>
  );
}

function Way({ way: { when, head, steps } }: { readonly way: ToldWay }) {
  return (
    <>
      <p className="small">
        {when && <span className="power-way-when">{when}: </span>}
        {head}
      </p>
      {steps.length > 0 && (
        <ol className="power-steps small">
          {keyed(steps).map(([key, step]) => (
            <li key={key}>{step}</li>
          ))}
        </ol>
      )}
    </>
  );
}
