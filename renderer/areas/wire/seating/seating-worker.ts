import '../../../strict-zod';
import { bestSeating } from '../../../../boards/planner/best-seating';
import type { SeatingAsk, SeatingTold } from './seating-messages';

// The search for the best seating, off the window's own thread. It is ended from outside when it is not wanted.
self.addEventListener('message', ({ data: { build, pinned } }: MessageEvent<SeatingAsk>) => {
  const tell = (told: SeatingTold) => self.postMessage(told);
  const news = bestSeating(build, { pinned, tell: (progress) => tell({ kind: 'progress', progress }) });
  for (const each of news) tell(each);
  tell({ kind: 'done' });
});
