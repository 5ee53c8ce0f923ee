import { afterEach, test } from 'vitest';
import { JOURNEYS } from '../journeys/journeys.ts';
import { endAll, start } from './electron.ts';

afterEach(endAll);

test.each(Object.entries(JOURNEYS))('%s', (_what, journey) => journey(start));
