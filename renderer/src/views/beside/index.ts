// What stands beside the pages, in one file that comes after the window: it need not be there for the first list of options.

export { Around } from '../../frame/Around.tsx';
export { openAbout } from '../about/openAbout.tsx';
