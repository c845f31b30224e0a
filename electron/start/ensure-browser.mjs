import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { installFromDebian } from './debian.mjs';
import { findBrowser } from './find-browser.mjs';
import { inRoot } from './place.mjs';

const FETCH_LIMIT_MS = 300_000;

/** A browser for the end-to-end tests: one that is there, or else one that can be had without asking. Null: none. */
export function ensureBrowser() {
  return findBrowser() ?? fromDebian() ?? fromPlaywright();
}

/** On Debian and its kin, for root: a machine of a test service, or a container. */
function fromDebian() {
  return installFromDebian('chromium', 'for the end-to-end tests') ? findBrowser() : null;
}

/** The driver of our tests can fetch a browser of its own. */
function fromPlaywright() {
  console.log('Fetching a browser for the end-to-end tests …');
  const driver = inRoot('node_modules', 'playwright-core', 'cli.js');
  run(process.execPath, [driver, 'install', '--only-shell', 'chromium']);
  const ask = "import { chromium } from 'playwright-core'; console.log(chromium.executablePath())";
  const told = spawnSync(process.execPath, ['--input-type=module', '-e', ask], {
    cwd: inRoot(),
    encoding: 'utf8',
  });
  const path = told.stdout?.trim();
  return path && existsSync(path) ? path : null;
}

/**
 * @param {string} command
 * @param {string[]} args
 */
function run(command, args) {
  spawnSync(command, args, {
    stdio: ['ignore', 'ignore', 'inherit'],
    timeout: FETCH_LIMIT_MS,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
}
