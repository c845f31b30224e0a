import { describe, expect, test } from 'vitest';
import { MENU_BAR } from '../../../electron/menu-list';
import { actionsOf, runAction } from '../../../renderer/actions/actions';
import { shortcutWords } from '../../../renderer/actions/shortcut';
import { bench, POWER_SWITCH } from '../stand-in';

const action = (b: ReturnType<typeof bench>, id: string) => actionsOf(b).find((each) => each.id === id);

describe('the list of actions', () => {
  test('has every action that the machine’s own menu sends', () => {
    const ids = new Set(actionsOf(bench()).map(({ id }) => id));
    const sent = MENU_BAR.flatMap(({ items }) =>
      items.flatMap((item) => (typeof item === 'object' && 'id' in item ? [item.id] : [])),
    );
    expect(sent.length).toBeGreaterThan(10);
    expect(sent.filter((id) => !ids.has(id))).toEqual([]);
  });

  test.each([false, true])('gives no key to two actions (Mac: %s)', (mac) => {
    const keys = actionsOf(bench()).flatMap(({ shortcuts }) =>
      shortcuts.map((each) => shortcutWords(each, mac)),
    );
    expect(keys).toEqual([...new Set(keys)]);
  });

  test('has the keys people know from everywhere', () => {
    const keys = Object.fromEntries(actionsOf(bench()).map(({ id, shortcuts }) => [id, shortcuts]));
    expect(keys).toMatchObject({
      'file.new': ['Mod+N'],
      'file.open': ['Mod+O'],
      'file.save': ['Mod+S'],
      'file.save-as': ['Mod+Shift+S'],
      'file.close': ['Mod+W'],
      'edit.undo': ['Mod+Z'],
      'edit.redo': ['Mod+Y', 'Mod+Shift+Z'],
      'edit.search': ['Mod+K', 'Mod+F'],
      'view.fit': ['Mod+0'],
    });
  });

  test('has no lone letter: those belong to the plug in the hand', () => {
    const lone = actionsOf(bench()).flatMap(({ shortcuts }) =>
      shortcuts.filter((key) => /^[A-Za-z]$/.test(key)),
    );
    expect(lone).toEqual([]);
  });
});

describe('what can be done', () => {
  test('names the step that would be undone, then the one that would come back', () => {
    const b = bench();
    expect(action(b, 'edit.undo')).toMatchObject({ label: 'Undo', enabled: false });
    b.run({ name: 'unseat-plug', args: POWER_SWITCH });
    expect(action(b, 'edit.undo')).toMatchObject({ label: 'Undo Take off POWER SW', enabled: true });
    runAction(b, 'edit.undo');
    expect(action(b, 'edit.redo')).toMatchObject({ label: 'Redo Take off POWER SW', enabled: true });
  });

  test('with a lead needs a chosen one, and taking off a seated one', () => {
    const b = bench();
    expect(action(b, 'edit.place')?.enabled).toBe(false);
    b.session.getState().select({ kind: 'plug', plug: POWER_SWITCH });
    expect(action(b, 'edit.unseat')).toMatchObject({ label: 'Take off Power switch', enabled: true });
    expect(runAction(b, 'edit.unseat')).toBe(true);
    // As a step that was taken, never as one to be taken: a person at a bench would take it.
    expect(b.session.getState().message).toBe('Done: Take off POWER SW.');
    expect(action(b, 'edit.unseat')?.enabled).toBe(false);
    expect(action(b, 'edit.place')?.label).toBe('Place Power switch');
  });

  test('with a file needs something open', () => {
    const b = bench();
    b.editor.getState().close();
    const off = actionsOf(b)
      .filter(({ enabled }) => !enabled)
      .map(({ id }) => id);
    expect(off).toEqual(
      expect.arrayContaining(['file.save', 'file.save-as', 'file.close', 'view.fit', 'area.wire']),
    );
    expect(off).not.toContain('file.open');
    expect(runAction(b, 'file.save')).toBe(false);
  });

  test('turning the view four times leaves the build as it was', () => {
    const b = bench();
    for (const _ of [1, 2, 3, 4]) runAction(b, 'view.turn');
    expect(b.build().view).toEqual({ turn: 0, mirrored: false });
  });
});
