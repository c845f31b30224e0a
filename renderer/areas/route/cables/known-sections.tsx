import { pathName } from '../../../../boards/document/place-names';
import { asLaid } from '../../../../boards/routing/laid/as-laid';
import { bundlesOf } from '../../../../boards/routing/laid/bundles';
import { runName } from '../../../../boards/routing/laid/end-names';
import { layingOrder } from '../../../../boards/routing/laid/order-of-laying';
import { layingReasonWords, ORDER_SOURCE, STAGE_WORDS } from '../../../../boards/routing/laid/order-words';
import { openingName } from '../../../../boards/routing/laid/run-words';
import { Button } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { bundleWords, openingUseWords } from '../../../words/cable-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { Fold } from '../fold';
import { refOf } from './cable-moves';

/** What goes through each opening, and whether it has room for that. */
export function OpeningsSection() {
  const { session } = useWorkbench();
  const build = useBuild();
  const laid = asLaid(build);
  if (laid === undefined || laid.runs.length === 0 || laid.openings.length === 0) return null;
  const names = new Map(laid.runs.map(({ id, lead, run }) => [id, runName(build, lead, run)]));
  const full = laid.openings.filter(({ over }) => over !== undefined).length;
  return (
    <Fold title={full > 0 ? `Openings, ${full} overfull` : 'Openings'}>
      <ul className="known-list">
        {laid.openings.map((use) => (
          <li key={use.opening.id}>
            {use.over && <SeveritySign severity="fault" spoken />}
            <Button
              kind="link"
              onPress={() =>
                session.getState().select({ kind: 'on-tray', part: { kind: 'opening', id: use.opening.id } })
              }
            >
              {openingName(build, use.opening.id)}
            </Button>
            <p className="soft small">
              {openingUseWords(
                use,
                use.runs.flatMap((id) => names.get(id) ?? []),
              )}
            </p>
          </li>
        ))}
      </ul>
    </Fold>
  );
}

/** What shares a path, and how thick it is tied together. */
export function BundlesSection() {
  const { session } = useWorkbench();
  const build = useBuild();
  const laid = asLaid(build);
  const { tray } = build.case;
  const bundles = laid === undefined ? [] : bundlesOf(laid);
  if (tray === undefined || bundles.length === 0) return null;
  return (
    <Fold title="Bundles">
      <ul className="known-list">
        {bundles.map((bundle) => {
          const path = tray.paths.find(({ id }) => id === bundle.path);
          return path === undefined ? null : (
            <li key={bundle.path}>
              <Button
                kind="link"
                onPress={() =>
                  session.getState().select({ kind: 'on-tray', part: { kind: 'path', id: path.id } })
                }
              >
                {pathName(tray, path)}
              </Button>
              <p className="soft small">{bundleWords(build, bundle)}</p>
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}

/** In which order the cables that have a way are laid, and why. */
export function OrderSection() {
  const { session } = useWorkbench();
  const build = useBuild();
  const stages = layingOrder(build) ?? [];
  if (stages.length === 0) return null;
  return (
    <Fold title="Order of laying">
      {stages.map(({ stage, turns }) => (
        <div key={stage} className="cable-part">
          <h3>{STAGE_WORDS[stage]}</h3>
          <ol className="known-list">
            {turns.map(({ run, reason }) => (
              <li key={run.id}>
                <Button
                  kind="link"
                  onPress={() => session.getState().select({ kind: 'plug', plug: refOf(run) })}
                >
                  {runName(build, run.lead, run.run)}
                </Button>
                <p className="soft small">{layingReasonWords(build, reason)}</p>
              </li>
            ))}
          </ol>
        </div>
      ))}
      <p className="soft small">Within each part: {ORDER_SOURCE}.</p>
    </Fold>
  );
}
