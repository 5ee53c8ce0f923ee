// A child that is killed: it saves and keeps work as fast as it can.
// Arguments: the file, the folder of settings, and the number of the first text. Before and after each save it says so.
import { writeSync } from 'node:fs';
import { startShell } from './shell.mjs';
import { textOf } from './texts.mjs';

const [file, userData, first] = process.argv.slice(2);
const call = await startShell(file, userData);
await call('autosaves');
const { token } = await call('open');
await call('opens', token, null);
for (let number = Number(first); ; number += 1) {
  const text = textOf(number);
  writeSync(1, `keep ${number}\n`);
  await call('autosave', { name: 'shop.ratiowright', token, base: textOf(number - 1), text });
  writeSync(1, `kept ${number}\nsave ${number}\n`);
  await call('save', token, text, null);
  await call('opens', token, null);
  writeSync(1, `saved ${number}\n`);
}
