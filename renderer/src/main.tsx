// The shared style first: a page's own style, imported with the page, has the last word.
import './style/fonts.css';
import './style/tokens.css';
import './style/controls.css';
import './style/drawings.css';
import './style/app.css';

import { speakTheirs } from './words.ts';

document.documentElement.lang = await speakTheirs();
await import('./start.tsx');
