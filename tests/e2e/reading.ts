import type { Page } from 'playwright-core';
import type { CheckReport } from '../../electron/cli/check-report';

/** Words as they are typed: no-break spaces as plain ones. */
export function plain(words: string | null): string {
  return (words ?? '').replaceAll('\u00a0', ' ');
}

/** A finding as the window shows it: its sign's word and its title. */
export interface ReadFinding {
  readonly severity: string;
  readonly title: string;
}

/** What stands under "Before power", from the top. */
export async function findingsIn(page: Page): Promise<readonly ReadFinding[]> {
  const read = await page
    .getByRole('list', { name: 'Findings', exact: true })
    .locator('> li')
    .evaluateAll((items) =>
      items.map((item) => ({
        severity: item.querySelector('p')?.textContent ?? '',
        title: item.querySelector('h3')?.textContent ?? '',
      })),
    );
  return read.map(({ severity, title }) => ({ severity, title: plain(title) }));
}

/** The same as `leadwright check --json` tells it of the one file it was given. */
export function findingsOf(report: CheckReport): readonly ReadFinding[] {
  const [file] = report.files;
  if (file?.outcome !== 'checked') throw new Error(`Not checked: ${JSON.stringify(report)}`);
  return file.findings.map(({ severity, title }) => ({
    severity: `${severity.charAt(0).toUpperCase()}${severity.slice(1)}`,
    title: plain(title),
  }));
}

/** "Power switch, PANEL, pins 6 and 8": each lead of a section of the shelf, and where it is. */
export async function leadsIn(
  page: Page,
  section: 'On the shelf' | 'Seated' | 'Set aside',
): Promise<readonly string[]> {
  const names = await page
    .getByRole('grid', { name: 'Leads' })
    .getByRole('rowgroup', { name: section })
    .locator('[role="row"][aria-label]')
    .evaluateAll((rows) => rows.map((row) => row.getAttribute('aria-label')));
  return names.map(plain);
}

/** "saved in study-3.build.json", "2 unsaved changes": what the top bar says of the file. */
export async function stateOf(page: Page): Promise<string> {
  return plain(await page.getByRole('banner').getByRole('paragraph').textContent());
}

/** A message or a question on the screen: all of its words. */
export async function messageIn(page: Page): Promise<string> {
  const dialog = page.getByRole('alertdialog');
  await dialog.waitFor();
  return plain(await dialog.textContent());
}
