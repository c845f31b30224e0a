import '../../../strict-zod';
import { type ReckonTask, reckoner } from './work-out';

// What each fault would show takes a while on a large build, so it is worked out beside the window.
const answer = reckoner();
self.onmessage = ({ data }: MessageEvent<ReckonTask>) => self.postMessage(answer(data));
