// The shared style first: a page's own style, imported with the page, has the last word.
import './style/fonts.css';
import './style/tokens.css';
import './style/controls.css';
import './style/drawings.css';
import './style/app.css';

import { render } from 'solid-js/web';
import { App } from './App.tsx';
import { pickHost } from './host/pick.ts';

const root = document.getElementById('app');
if (root === null) throw new RangeError('the page has no place for the app');
const host = await pickHost();
render(() => <App host={host} />, root);
