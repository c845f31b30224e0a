import { parseArgs } from 'node:util';
import { electronBinary, fetchElectron } from './electron-binary.mjs';
import { ensureReady } from './ensure.mjs';
import { openInBrowser, smokeInBrowser } from './open-in-browser.mjs';
import { openInElectron } from './open-in-electron.mjs';
import { fromWhereTyped } from './place.mjs';

const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    browser: { type: 'boolean', default: false },
    smoke: { type: 'boolean', default: false },
  },
});
const files = positionals.map(fromWhereTyped);

ensureReady();
const binary = asked.browser || isRootOnLinux() ? null : (electronBinary() ?? (await fetchElectron()));
if (asked.smoke) await smoke();
else await open();

/** The window, by the first door that opens. */
async function open() {
  if (binary !== null) {
    if (await openInElectron(binary, files, { smoke: false })) return;
    console.log('Electron did not start here. The window opens in the browser instead.');
  }
  await openInBrowser(files);
}

/** Whether the window comes up by the door that would be taken. */
async function smoke() {
  const door = binary === null ? 'browser' : 'Electron';
  const shown = binary === null ? await smokeInBrowser() : await openInElectron(binary, [], { smoke: true });
  console.log(
    `Smoke (${door}): ${shown ? 'the page rendered and reached the machine' : 'no page showed itself'}.`,
  );
  process.exitCode = shown ? 0 : 1;
}

/** Electron's sandbox does not work for root; it is not switched off, the browser is used instead. */
function isRootOnLinux() {
  return process.platform === 'linux' && process.getuid?.() === 0;
}
