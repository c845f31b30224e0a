/**
 * A group of modules that are changed, one small thing at a time, and the tests that have to notice. Only tests of
 * these modules stand here: what those that try every fault, and those of `tests/faults` and `tests/e2e`, would notice
 * besides is not counted.
 * @typedef {object} MutationGroup
 * @property {readonly string[]} modules
 * @property {readonly string[]} tests patterns
 */

const host = (/** @type {readonly string[]} */ names) => names.map((name) => `electron/host/${name}.ts`);

/**
 * Everything that saves, recovers and undoes.
 * @type {Readonly<Record<string, MutationGroup>>}
 */
export const GROUPS = {
  saving: {
    modules: host([
      'save-file',
      'save-problem',
      'flush-folder',
      'temporary',
      'stamp',
      'errno',
      'kept-file',
      'turns',
      'document-calls',
    ]),
    tests: [
      'tests/electron/host/{save-file,save-problem,full-disk,kept-file,turns,odd-places,documents}.test.ts',
    ],
  },
  recovery: {
    modules: host([
      'recovery',
      'recovery-copy',
      'recovery-calls',
      'process-life',
      'versions',
      'version-calls',
    ]),
    tests: ['tests/electron/host/{recovery,recovered-work,recovery-copy,versions,process-life}.test.ts'],
  },
  window: {
    modules: [
      'renderer/files/save-build.ts',
      'renderer/files/leave-build.ts',
      'renderer/files/recovered.ts',
      'renderer/files/versions.ts',
      'renderer/store/recovery.ts',
      'renderer/store/editor.ts',
    ],
    tests: ['tests/renderer/{files,store}/**/*.test.ts'],
  },
  undo: {
    modules: ['boards/edit/history.ts', 'boards/edit/apply.ts', 'boards/edit/change.ts'],
    tests: ['tests/boards/edit/*.test.ts'],
  },
};
