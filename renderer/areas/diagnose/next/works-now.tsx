import { WORKS_NOW } from '../../../../boards/diagnosis/trials/words';

/** What it proves that the trouble went away, and what not. */
export function WorksNow() {
  return (
    <div className="works-now" role="note" aria-label="It works now">
      <p>
        <strong>{WORKS_NOW.proves}</strong>
      </p>
      <p>{WORKS_NOW.provesNot}</p>
    </div>
  );
}
