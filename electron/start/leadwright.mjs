import { pathToFileURL } from 'node:url';
import { build } from './build.mjs';
import { ensureReady } from './ensure.mjs';
import { inRoot } from './place.mjs';

// Built only when a source has changed, and without a word: what is printed belongs to the command.
ensureReady({ quiet: true });
await build(['cli']);

// npm runs scripts from the top of the clone; file names are meant from where the person is.
if (process.env.INIT_CWD !== undefined) process.chdir(process.env.INIT_CWD);
await import(pathToFileURL(inRoot('dist', 'leadwright.mjs')).href);
