// npm start: the headless command on the invented demo shop.
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const root = path.resolve(import.meta.dirname, '..');
process.argv = [...process.argv.slice(0, 2), 'options', path.join(root, 'tests/examples/demo.ratiowright'), '--machine', 'bench-1', '--material', 'e12'];
await import(pathToFileURL(path.join(root, 'dist/cli/ratiowright.js')).href);
