import './strict-zod';
import '@fontsource-variable/atkinson-hyperlegible-mono/wght.css';
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './look/theme.css';
import './look/base.css';
import './look/controls.css';
import './look/sign.css';
import './look/wires.css';
import { allowEmptyHtml } from './trusted-types';

allowEmptyHtml();

// Fetched by name: what is bundled together runs its schemas before this file, and so before strict-zod.
const { openWindow } = await import('./open-window');
await openWindow();
