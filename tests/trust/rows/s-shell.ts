import { readFileSync } from 'node:fs';
import { electronBinary } from '../../../electron/start/electron-binary.mjs';
import { inRoot } from '../../../electron/start/place.mjs';
import type { TrustRow } from '../row';
import { runTests } from '../run-tests';

const POINTS = 20;
const NO_PROGRAM = 'Electron’s program is not installed';

/** Why what needs the program itself cannot be tried here. */
const whyNot = (): string =>
  electronBinary() === null ? NO_PROGRAM : 'there are no tests that drive Electron’s program yet';

export const ROWS: readonly TrustRow[] = [
  {
    id: 'S1',
    promise:
      'Electron’s twenty points on security hold, and each is seen to be broken when its setting is turned round',
    target: { count: POINTS, what: 'points, on the recorded stand-in' },
    run: async () => {
      const { failures, skipped } = await runTests('core', ['tests/electron/shell']);
      const whole = failures.length === 0 && skipped === 0;
      return { tried: whole ? POINTS : 0, failures, notRun: `in the program itself: ${whyNot()}` };
    },
  },
  {
    id: 'S2',
    promise: 'The fuses of the packaged program are set as its settings say',
    target: { count: 8, what: 'fuses read from the program' },
    run: async () => ({
      tried: 0,
      failures: [],
      notRun: `${whyNot()}; the packager’s settings are held by S1`,
    }),
  },
  {
    id: 'S3',
    promise: 'The page’s process has no rights of its own (seccomp, no new privileges)',
    target: { count: 1, what: 'window of the program' },
    run: async () => ({ tried: 0, failures: [], notRun: whyNot() }),
  },
  {
    id: 'S16',
    promise: 'Packages are few, exact, and run nothing when they are installed',
    target: { count: 4, what: 'rules' },
    run: async () => {
      const text = (name: string) => readFileSync(inRoot(name), 'utf8');
      const { dependencies, devDependencies } = JSON.parse(text('package.json'));
      const lock = JSON.parse(text('package-lock.json')).packages[''];
      const versions = Object.entries<string>({ ...dependencies, ...devDependencies });
      const many = Object.keys(dependencies).filter((name) => !name.startsWith('@fontsource')).length;
      const failures = [
        ...versions
          .filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))
          .map(([name]) => `${name} is no exact version`),
        ...(JSON.stringify({ dependencies, devDependencies }) ===
        JSON.stringify({ dependencies: lock.dependencies, devDependencies: lock.devDependencies })
          ? []
          : ['the lock file is of other packages']),
        ...(text('electron/start/ensure.mjs').includes("'ci', '--ignore-scripts'")
          ? []
          : ['packages may run scripts when they are installed']),
        ...(many <= MOST_PACKAGES
          ? []
          : [`${many} packages with code in the program, at most ${MOST_PACKAGES}`]),
      ];
      return { tried: 4, failures, notRun: 'known flaws and newer versions: that takes the registry' };
    },
  },
];

/** Fonts apart, which hold no code. */
const MOST_PACKAGES = 15;
