import { isAbsolute, join } from 'node:path';

export interface Surroundings {
  readonly platform: string;
  readonly home: string;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * The folder for settings, recent files and recovery copies, where each system wants such things.
 * LEADWRIGHT_DATA names another one.
 */
export function appDataFolder({ platform, home, env }: Surroundings): string {
  const chosen = absolute(env.LEADWRIGHT_DATA);
  if (chosen !== null) return chosen;
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Leadwright');
  if (platform === 'win32') {
    return join(absolute(env.APPDATA) ?? join(home, 'AppData', 'Roaming'), 'Leadwright');
  }
  // The XDG Base Directory Specification: a relative path in the variable is to be ignored.
  return join(absolute(env.XDG_DATA_HOME) ?? join(home, '.local', 'share'), 'leadwright');
}

function absolute(path: string | undefined): string | null {
  return path !== undefined && isAbsolute(path) ? path : null;
}
