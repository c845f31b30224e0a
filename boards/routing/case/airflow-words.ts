import { capital } from '../../base/capital';
import { listed } from '../../base/listed';
import { placeName } from '../../document/place-names';
import type { Tray } from '../../document/tray';
import type { Airflow } from './airflow';

/** What directions of fans rest on. */
export const AIRFLOW_SOURCE = 'common practice, no source';

/** What all fans do together, in sentences; no more than their makers' figures allow. */
export function airflowWords(airflow: Airflow, tray: Tray): readonly string[] {
  const { intake, exhaust, unseen, balance } = airflow;
  const seen = intake.fans.length + exhaust.fans.length;
  const said: string[] = [];
  if (seen > 0)
    said.push(
      `${capital(counted(intake.fans.length, 'in', intake.flowM3PerHour))}, ${counted(exhaust.fans.length, 'out', exhaust.flowM3PerHour)}.`,
    );
  const whole = unseen.length === 0;
  if (whole && seen > 0 && intake.fans.length === 0)
    said.push('No fan blows in: air comes through every gap there is, past no filter.');
  if (whole && seen > 0 && exhaust.fans.length === 0)
    said.push('No fan blows out: warm air leaves through the gaps only.');
  said.push(...balanceWords(balance));
  if (unseen.length > 0) said.push(`Not looked at: ${listed(unseen.map((id) => placeName(tray, id)))}.`);
  return said;
}

function balanceWords(balance: Airflow['balance']): readonly string[] {
  const free = 'Makers measure with nothing in the way; in the case each fan moves less.';
  switch (balance) {
    case 'more-in':
      return [`By the makers’ figures more is blown in than out. ${free}`];
    case 'more-out':
      return [`By the makers’ figures more is blown out than in. ${free}`];
    case 'even':
      return [`By the makers’ figures as much is blown in as out, to a tenth. ${free}`];
    case 'unknown':
      return [];
  }
}

function counted(count: number, way: 'in' | 'out', flow: number | undefined): string {
  if (count === 0) return `none blows ${way}`;
  const fans = count === 1 ? `1\u00a0fan blows ${way}` : `${count}\u00a0fans blow ${way}`;
  return flow === undefined ? fans : `${fans} (up to ${Math.round(flow)}\u00a0m³/h)`;
}
