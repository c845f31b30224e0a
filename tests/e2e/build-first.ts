import { build } from '../../electron/start/build.mjs';

/** The window, its door and the command line as built from what stands here now. */
export async function setup(): Promise<void> {
  await build(['page', 'door', 'cli', 'schemas']);
}
