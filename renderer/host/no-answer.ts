/** The program behind the window is gone: nobody's bug, and nothing that the window itself has to end for. */
export class NoAnswer extends Error {}
