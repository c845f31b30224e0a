import { listed } from '../../base/listed';
import { placeName } from '../../document/place-names';
import type { Tray } from '../../document/tray';
import { airflowOf } from '../../routing/case/airflow';

/** Which fan of the case blows which way, and where to look at those that nobody has seen. */
export function fanLines(tray: Tray | undefined): readonly string[] {
  const { fans = [] } = tray ?? {};
  if (tray === undefined || fans.length === 0) return [];
  const { intake, exhaust, unseen } = airflowOf(fans);
  const names = (ids: readonly string[]) => listed(ids.map((id) => placeName(tray, id)));
  return [
    ...(intake.fans.length > 0 ? [`Blow in: ${names(intake.fans)}.`] : []),
    ...(exhaust.fans.length > 0 ? [`Blow out: ${names(exhaust.fans)}.`] : []),
    ...(unseen.length > 0 ? [`Not looked at: ${names(unseen)}.`] : []),
    'Air leaves a fan on the side with the struts; an arrow on its frame counts for more.',
  ];
}
