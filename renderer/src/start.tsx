import { render } from 'solid-js/web';
import { App } from './App.tsx';
import { watchCursor } from './frame/lastHeld.ts';
import { pickHost } from './host/pick.ts';

const root = document.getElementById('app');
if (root === null) throw new RangeError('the page has no place for the app');
watchCursor();
const host = await pickHost();
render(() => <App host={host} />, root);
