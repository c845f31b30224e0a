/** Whether the window may close now, or the person has to be asked first. */
export interface Leaving {
  readonly note: (state: { readonly unsaved: boolean }) => void;
  /** A page that hangs or is gone cannot ask; its recovery copy is offered at the next start. */
  readonly noteAnswering: (answering: boolean) => void;
  readonly mayClose: () => boolean;
}

export function makeLeaving(): Leaving {
  let unsaved = false;
  let answering = true;
  return {
    note: (state) => {
      unsaved = state.unsaved;
    },
    noteAnswering: (now) => {
      answering = now;
    },
    mayClose: () => !unsaved || !answering,
  };
}
