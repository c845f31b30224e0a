import { expect, test } from 'vitest';
import { appDataFolder } from '../../../electron/host/app-data';

const at = (platform: string, env: Record<string, string>) =>
  appDataFolder({ platform, env, home: '/home/ada' });

test('Each system keeps the program’s own files where it wants them', () => {
  expect(at('linux', {})).toBe('/home/ada/.local/share/leadwright');
  expect(at('linux', { XDG_DATA_HOME: '/data' })).toBe('/data/leadwright');
  expect(at('darwin', {})).toBe('/home/ada/Library/Application Support/Leadwright');
  expect(at('win32', { APPDATA: '/roaming' })).toBe('/roaming/Leadwright');
});

test('A relative path is no place', () => {
  expect(at('linux', { XDG_DATA_HOME: 'data' })).toBe('/home/ada/.local/share/leadwright');
  expect(at('linux', { LEADWRIGHT_DATA: 'data' })).toBe('/home/ada/.local/share/leadwright');
});

test('Another place can be named', () => {
  expect(at('linux', { LEADWRIGHT_DATA: '/elsewhere', XDG_DATA_HOME: '/data' })).toBe('/elsewhere');
});
