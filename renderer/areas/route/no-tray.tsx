/** What a tray is for, while the case has none. */
export function NoTray() {
  return (
    <section className="no-tray" aria-labelledby="no-tray">
      <h2 id="no-tray">No tray is drawn yet</h2>
      <p>
        The tray is the sheet of metal that carries the board: once its openings, bays and paths are drawn
        with their lengths, each cable can be told its way, and whether it reaches.
      </p>
    </section>
  );
}
