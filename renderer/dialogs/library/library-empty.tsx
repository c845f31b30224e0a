import { Library } from 'lucide-react';

/** Before anything is kept: what the library is for, and the one thing to do. */
export function LibraryEmpty({ hasBuild }: { readonly hasBuild: boolean }) {
  return (
    <div className="library-empty">
      <Library size={40} aria-hidden="true" />
      <h3>Set a board down once, use it again</h3>
      <p>
        A sheet that is kept here is there for every later build with the same board or the same case. Each is
        a file of its own in the folder above.
      </p>
      <p className="soft">
        {hasBuild
          ? 'Keep the board or the case of the open build, or import a sheet that somebody gave you.'
          : 'Import a sheet that somebody gave you, or keep the board of a build when one is open.'}
      </p>
    </div>
  );
}
