import '../../strict-zod';
import { parseDocument } from '../../../boards/document/parse';

// Reads one text, off the window's own thread, and is ended from outside when it has.
self.addEventListener('message', ({ data: text }: MessageEvent<string>) => {
  self.postMessage(parseDocument(text));
});
