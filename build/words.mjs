// npm run words: writes core/words/english.json, every phrase of the program, for translators and for the test that holds it.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { runnerImport } from 'vite';

const root = path.resolve(import.meta.dirname, '..');
const { module } = await runnerImport(path.join(root, 'build/words.ts'), { configFile: false, root });
const files = module.dictionary(root);
writeFileSync(path.join(root, 'core/words/english.json'), `${JSON.stringify(files, null, 2)}\n`);
console.log(`core/words/english.json: ${Object.values(files).reduce((sum, phrases) => sum + Object.keys(phrases).length, 0)} phrases`);
