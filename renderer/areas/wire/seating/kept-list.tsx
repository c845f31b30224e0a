import { type PlugRef, plugOf, seatOf } from '../../../../boards/document/lookup';
import { Tick } from '../../../look/tick';
import { seatWords } from '../../../words/seat-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { plugTitleOf } from '../placing/hand';

/** Plugs that keep their place in the plan; let go of by taking the tick away. */
export function KeptList({ kept }: { readonly kept: readonly PlugRef[] }) {
  const { session } = useWorkbench();
  const build = useBuild();
  const there = kept.filter((plug) => plugOf(build, plug));
  if (there.length === 0) return null;
  return (
    <section className="kept" aria-label="Kept where they are">
      <h3 className="shelf-heading">Kept where they are</h3>
      {there.map((plug) => {
        const seat = seatOf(build, plug);
        return (
          <Tick key={`${plug.lead} ${plug.plug}`} on onChange={() => session.getState().keep(plug, false)}>
            {`${plugTitleOf(build, plug)}, ${seat ? seatWords(build, seat) : 'on the shelf: planned like any other'}`}
          </Tick>
        );
      })}
    </section>
  );
}
