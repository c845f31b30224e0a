import { Button } from '../look/button';

/** Said once when the program itself has failed: plainly, with the way on. */
export function CrashScreen({ thrown }: { readonly thrown: unknown }) {
  const detail = thrown instanceof Error ? thrown.message : String(thrown);
  return (
    <main className="crash" role="alert">
      <h1>The window cannot go on</h1>
      <p>Something in the program failed that should not. Unsaved work has been kept as a recovery copy.</p>
      <p className="soft">It says: {detail}</p>
      <p>Load the window again; the start screen will offer the recovery copy.</p>
      <Button kind="main" onPress={() => location.reload()}>
        Load again
      </Button>
    </main>
  );
}
