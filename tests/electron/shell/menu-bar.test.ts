import { expect, test } from 'vitest';
import type { HostApi } from '../../../boards/host';
import { MENU_BAR } from '../../../electron/menu-list';
import { actionsOf } from '../../../renderer/actions/actions';
import { createEditor } from '../../../renderer/store/editor';
import { keepRecovery } from '../../../renderer/store/recovery';
import { createSession } from '../../../renderer/store/session-store';
import { makeMachine } from '../host/machine';

const chosen = MENU_BAR.flatMap(({ items }) =>
  items.flatMap((item) => (typeof item === 'object' && 'id' in item ? [item] : [])),
);

/** Electron and the page write a few keys differently. */
function asThePageSpells(accelerator: string): string {
  return accelerator.replace('CmdOrCtrl', 'Mod').replace(/-$/, 'Minus');
}

/** The page's own list, as it is when the program has just been started. */
async function pageActions() {
  const host: HostApi = { ...makeMachine().calls, onRequest: () => () => undefined };
  const page = 'page-of-the-window';
  const about = await host.about({ page });
  const editor = createEditor();
  const recovery = keepRecovery(host, editor, {
    page,
    newId: () => 'session-of-the-page',
    onTrouble: () => undefined,
  });
  return actionsOf({
    host,
    page,
    about,
    editor,
    recovery,
    session: createSession(),
    canvas: { current: null },
  });
}

test('Every line of the menu bar is an action that the page has, under the same name', async () => {
  const labels = new Map((await pageActions()).map(({ id, label }) => [id, label]));
  expect(chosen.length).toBeGreaterThan(15);
  expect(chosen.map(({ id, label }) => [id, label])).toEqual(chosen.map(({ id }) => [id, labels.get(id)]));
});

test('Its keys are keys that the page listens for', async () => {
  const shortcuts = new Map((await pageActions()).map(({ id, shortcuts }) => [id, shortcuts.map(String)]));
  for (const { id, accelerator } of chosen) {
    if (accelerator !== undefined) expect(shortcuts.get(id), id).toContain(asThePageSpells(accelerator));
  }
});

test('No key and no action is in the menu bar twice', () => {
  const keys = chosen.flatMap(({ accelerator }) => accelerator ?? []);
  expect(new Set(keys).size).toBe(keys.length);
  expect(new Set(chosen.map(({ id }) => id)).size).toBe(chosen.length);
});
