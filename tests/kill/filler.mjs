// A child on a small disk: it saves where there is no room, and then where there is. Arguments: the folder that is that disk, the folder of
// settings, the bytes that are taken up beforehand, and what the shell is to do before and after the first save. It prints what came of it.
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { startShell } from './shell.mjs';
import { numberOf, textOf } from './texts.mjs';

const [home, userData, taken_bytes, before, after] = process.argv.slice(2);
const file = path.join(home, 'shop.ratiowright');
const backup = path.join(home, 'shop.backup.ratiowright');
const ballast = path.join(home, 'ballast');
writeFileSync(file, textOf(1));
writeFileSync(ballast, 'x'.repeat(Number(taken_bytes)));
const call = await startShell(file, userData);
const number = (place) => (existsSync(place) ? numberOf(readFileSync(place, 'utf8')) : 'none');
const look = () => ({ file: number(file), backup: number(backup), names: readdirSync(home).sort() });

const { token } = await call('open');
await call('opens', token, null);
const run = (line) => execFileSync('sh', ['-c', line, 'sh', home]);
run(before);
const full = await call('save', token, textOf(2), null).catch((error) => error.message);
const held = look();
run(after);
rmSync(ballast, { force: true });
const room = await call('save', token, textOf(3), null).catch((error) => error.message);
await new Promise((resolve) => process.stdout.write(JSON.stringify({ full, held, room, last: look() }), resolve));
process.exit(0);
