import '../../../strict-zod';
import { laterByMessages } from './later';
import { type ReckonTask, reckoner } from './work-out';

// What each fault would show, and two of them at once, takes a while: it is worked out beside the window.
const answer = reckoner(laterByMessages(), { ahead: true });
self.onmessage = ({ data }: MessageEvent<ReckonTask>) => answer(data, (told) => self.postMessage(told));
