import { useCallback, useEffect, useState } from 'react';
import type { RecoveryOffer } from '../../boards/host';
import { openRecovered } from '../files/recovered';
import { Button } from '../look/button';
import { counted } from '../words/list-words';
import { whenWords } from '../words/time-words';
import { useWorkbench } from '../workbench';

/** Work that was not saved when the program last ended: take it up again, or throw it away. */
export function RecoveryOffers() {
  const workbench = useWorkbench();
  const { host, page } = workbench;
  const [offers, setOffers] = useState<readonly RecoveryOffer[]>([]);
  const load = useCallback(async () => setOffers(await host.listRecovery()), [host]);
  useEffect(() => void load(), [load]);
  if (offers.length === 0) return null;

  const throwAway = async (id: string) => {
    await host.dropRecovery({ id, page });
    await load();
  };
  return (
    <section className="recovery" aria-labelledby="recovery-title">
      <h2 id="recovery-title">Not saved last time</h2>
      <ul>
        {offers.map((offer) => (
          <li key={offer.id}>
            <span className="option-words">
              <span>{offer.name}</span>
              <span className="soft small">
                {counted(offer.changes, 'change')}, kept {whenWords(offer.savedMs, Date.now())}
                {offer.folder === null ? '' : `, from ${offer.folder}`}
              </span>
            </span>
            <Button
              kind="main"
              label={`Take up again: ${offer.name}`}
              onPress={() => void openRecovered(workbench, offer)}
            >
              Take up again
            </Button>
            <Button label={`Throw away: ${offer.name}`} onPress={() => void throwAway(offer.id)}>
              Throw away
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
