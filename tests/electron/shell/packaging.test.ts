import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { inRoot } from '../../../electron/start/place.mjs';

const require = createRequire(import.meta.url);

/** The packager's own reader and checker of its settings; it has no types for them. */
function packager(): { config: Record<string, unknown>; validate: () => Promise<void> } {
  const { load } = require('js-yaml');
  const { validateConfiguration } = require('app-builder-lib/out/util/config/config');
  const { DebugLogger } = require('builder-util');
  const config = load(readFileSync(inRoot('electron-builder.yml'), 'utf8'));
  return { config, validate: () => validateConfiguration(config, new DebugLogger(false)) };
}

test('The packager takes its settings as they are', async () => {
  await packager().validate();
});

test('A setting that it does not know would be refused', async () => {
  const { config, validate } = packager();
  config.electronFuzes = {};
  await expect(validate()).rejects.toThrow('electronFuzes');
});

test('The packaged program runs nothing but itself', () => {
  expect(packager().config.electronFuses).toEqual({
    runAsNode: false,
    enableCookieEncryption: true,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    loadBrowserProcessSpecificV8Snapshot: false,
    grantFileProtocolExtraPrivileges: false,
  });
});

test('The schemas lie beside the archive, where an editor of text can read them', () => {
  expect(packager().config.extraResources).toEqual([{ from: 'dist/schemas', to: 'schemas' }]);
});

test('The system opens each kind of our files with it', () => {
  const { fileAssociations } = packager().config as { fileAssociations: { ext: string }[] };
  expect(fileAssociations.map(({ ext }) => ext)).toEqual(['build.json', 'board.json', 'case.json']);
});
