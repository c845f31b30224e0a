import { beforeEach, expect, test, vi } from 'vitest';
import { type Bridge, CHANNELS, type HostRequest } from '../../../boards/host';

// Loaded once and kept, while the shell's own modules are loaded anew for each test.
const standIn = await vi.hoisted(() => import('./recorded-electron'));
const { forget, recorded } = standIn;

vi.mock('electron', () => standIn.electron);

beforeEach(async () => {
  forget();
  vi.resetModules();
  await import('../../../electron/preload');
});

const bridge = () => recorded.exposed.get('leadwright') as Bridge;

test('The page is given one thing, with one function for each call and one to listen', () => {
  expect([...recorded.exposed.keys()]).toEqual(['leadwright']);
  expect(Object.keys(bridge()).sort()).toEqual([...Object.keys(CHANNELS), 'onRequest'].sort());
  expect(Object.values(bridge()).every((each) => typeof each === 'function')).toBe(true);
});

test('Each function calls the channel of its own name, with its input as JSON', async () => {
  const functions = Object.entries(bridge()).filter(([name]) => name !== 'onRequest');
  for (const [name, call] of functions as [string, (...given: unknown[]) => Promise<unknown>][]) {
    recorded.invoked.length = 0;
    await call('{}', 'leadwright:save');
    const takesInput = !CHANNELS[name as keyof typeof CHANNELS].input.safeParse(undefined).success;
    expect(recorded.invoked).toEqual([[`leadwright:${name}`, takesInput ? '{}' : undefined]]);
  }
});

test('A request of the machine comes without the event it came by, until the page stops listening', () => {
  const heard: unknown[][] = [];
  const stop = bridge().onRequest((...given: [HostRequest]) => heard.push(given));
  recorded.renderer.emit('leadwright:request', { sender: 'the channels' }, { kind: 'leave' });
  stop();
  recorded.renderer.emit('leadwright:request', {}, { kind: 'leave' });
  expect(heard).toEqual([[{ kind: 'leave' }]]);
});
