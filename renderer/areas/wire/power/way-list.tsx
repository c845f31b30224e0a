import { pathWords } from '../../../../boards/findings/words/path';
import { useBuild } from '../../../workbench';
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
      <Way />
    </section>
  );
}

function Way() {
  const build = useBuild();
  const way = useChosenWay();
  if (!way) return <p className="soft small">Choose a pin or a seated lead to see where its current goes.</p>;
  const { head, steps } = pathWords(build, way.path);
  return (
    <>
      <p className="small">
        <span className="power-way-name">{way.name}.</span> {head}
      </p>
      {steps.length > 0 && (
        <ol className="power-steps small">
          {steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      )}
    </>
  );
}
