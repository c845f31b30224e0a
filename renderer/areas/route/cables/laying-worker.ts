import '../../../strict-zod';
import { allRoutes } from '../../../../boards/routing/search/all-routes';
import type { LayingAsk, LayingTold } from './laying-messages';

// The search for a way of every cable, off the window's own thread. It is ended from outside when it is not wanted.
self.addEventListener('message', ({ data: { laying, pinned } }: MessageEvent<LayingAsk>) => {
  const tell = (told: LayingTold) => self.postMessage(told);
  const found = allRoutes(laying, { pinned, tell: (progress) => tell({ kind: 'progress', progress }) });
  tell({ kind: 'found', found });
});
