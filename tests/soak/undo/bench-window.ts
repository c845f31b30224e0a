import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { analyse } from '../../../boards/analyse';
import type { Build } from '../../../boards/document/build';
import { parseDocument } from '../../../boards/document/parse';
import { wordsOf } from '../../../boards/findings/words';
import { shelfRows } from '../../../renderer/areas/wire/shelf-rows';
import { SEVERITY_WORDS } from '../../../renderer/words/severity-words';
import { findingsIn, leadsIn, plain } from '../../e2e/reading';
import { goTo, pressUntil } from '../gestures/controls';
import { AREA_KEYS } from '../gestures/gesture';

const WAIT_MS = 30_000;
const SAVE_MS = 5_000;

/** A window, and the files of its home folder that it works on: each opening has a file of its own. */
export class BenchWindow {
  readonly page: Page;
  readonly #home: string;
  #name = '';

  constructor(page: Page, home: string) {
    this.page = page;
    this.#home = home;
  }

  /**
   * Puts a build into a file of that name and opens it by the window's own list of files; what was open is let
   * go of.
   */
  async open(text: string, name: string): Promise<void> {
    writeFileSync(join(this.#home, name), text);
    await this.#choose(name);
  }

  /** Opens what was saved last from the disk, under another name. */
  async openAgain(name: string): Promise<void> {
    copyFileSync(join(this.#home, this.#name), join(this.#home, name));
    await this.#choose(name);
  }

  async #choose(name: string): Promise<void> {
    const { page } = this;
    const dialog = page.getByRole('dialog', { name: 'Open' });
    await pressUntil(page, 'Control+O', () => dialog.waitFor({ timeout: SAVE_MS }));
    await dialog.getByRole('option', { name }).first().click();
    const opened = page.getByRole('banner').getByText(`saved in ${name}`, { exact: true });
    const question = page.getByRole('alertdialog').getByRole('button', { name: 'Don’t save' });
    await opened.or(question).first().waitFor({ timeout: WAIT_MS });
    if (await question.isVisible()) await question.click();
    await opened.waitFor({ timeout: WAIT_MS });
    this.#name = name;
  }

  /** Saves by the key, and gives what is in the file then. */
  async saved(): Promise<string> {
    const { page } = this;
    await pressUntil(page, 'Control+S', () =>
      page.waitForResponse((response) => response.url().endsWith('/call/save'), { timeout: SAVE_MS }),
    );
    await page.getByRole('banner').getByText(`saved in ${this.#name}`, { exact: true }).waitFor();
    return readFileSync(join(this.#home, this.#name), 'utf8');
  }

  /** What the top bar says of the file, also while something lies over the window. */
  async state(): Promise<string> {
    return plain(await this.page.locator('.top-state').textContent());
  }

  /** How many steps lie between the build that shows and the one that was saved. */
  async steps(): Promise<number> {
    const [, many] = /^(\d+) unsaved change/.exec(await this.state()) ?? [];
    return Number(many ?? 0);
  }

  /** What the Wire area shows of the build: where each plug is, and what was found. */
  async shown(): Promise<readonly string[]> {
    const { page } = this;
    await goTo(page, AREA_KEYS.wire);
    await page.getByRole('tab', { name: 'Leads', exact: true }).click();
    await page.getByRole('complementary', { name: 'Before power' }).waitFor();
    const leads = [];
    for (const section of ['On the shelf', 'Seated', 'Set aside'] as const)
      for (const lead of await leadsIn(page, section)) leads.push(`${section}: ${lead}`);
    return [...leads, ...(await findingsIn(page)).map(({ severity, title }) => `${severity}: ${title}`)];
  }
}

/** The same as it follows from a file. */
export function shownOf(text: string): readonly string[] {
  const build = buildOf(text);
  const { findings } = analyse(build);
  const { onShelf, seated, setAside } = shelfRows(build, findings);
  const sections = { 'On the shelf': onShelf, Seated: seated, 'Set aside': setAside };
  return [
    ...Object.entries(sections).flatMap(([section, rows]) =>
      rows.map(({ title, words }) => `${section}: ${plain(`${title}, ${words}`)}`),
    ),
    ...findings.map((finding) =>
      plain(`${SEVERITY_WORDS[finding.severity]}: ${wordsOf(finding, build).title}`),
    ),
  ];
}

/** The build that a text holds, by the reader of the program. */
export function buildOf(text: string): Build {
  const parsed = parseDocument(text);
  if (!parsed.ok) throw new Error(`Does not open: ${JSON.stringify(parsed.problem).slice(0, 300)}`);
  if (parsed.value.format !== 'leadwright/build') throw new Error('Is no build');
  return parsed.value;
}
