import './strict-zod';
import '@fontsource-variable/atkinson-hyperlegible-mono/wght.css';
import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './look/theme.css';
import './look/base.css';
import './look/controls.css';
import './look/sign.css';
import './look/wires.css';
import { openWindow } from './open-window';
import { allowWhatWeNeed } from './trusted-types';

allowWhatWeNeed();

void openWindow();
