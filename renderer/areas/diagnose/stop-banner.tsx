import type { Stop } from '../../../boards/diagnosis/trials/held-back';
import { stopWords } from '../../../boards/diagnosis/trials/words';
import { SeveritySign } from '../../look/severity-sign';

/** What to do at once, in place of any trial; nobody can look past it. */
export function StopBanner({ stops }: { readonly stops: readonly Stop[] }) {
  const [first, ...more] = stopWords(stops);
  return (
    <section className="stop-banner" role="alert" aria-label="Stop">
      <SeveritySign severity="danger" spoken />
      <div>
        <p className="stop-first">{first}</p>
        <ul>
          {more.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
    </section>
  );
}
