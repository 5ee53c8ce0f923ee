import path from 'node:path';
import { createServer, createServerModuleRunner, type Plugin } from 'vite';
import type { Gathered } from './stand.ts';

/** Loads test files with the program's text as it is changed here, as often as asked, in this process. */
export interface Workshop {
  /** Forgets every module, so that the next file starts from nothing. */
  forget(): void;
  /** The tests of a file, which are run with `run`. */
  load(file: string): Promise<readonly Gathered[]>;
  /** The files of the project that are loaded now, and the kept texts that were read since it was asked last. */
  loaded(): Promise<readonly string[]>;
  close(): Promise<void>;
}

interface Stand {
  takeKept(): readonly string[];
  gather(place: string, load: () => Promise<unknown>): Promise<readonly Gathered[]>;
}

/** @param change  the text of a file of the project as it is to run */
export async function openWorkshop(root: string, change: (place: string, text: string) => string): Promise<Workshop> {
  const stand = path.join(root, 'tests/mutation/stand.ts');
  const place = (id: string) => path.relative(root, id).replaceAll('\\', '/');
  const plugin: Plugin = {
    name: 'mutants',
    enforce: 'pre',
    transform(text, id) {
      if (place(id).startsWith('core/')) return change(place(id), text);
      return place(id).startsWith('tests/') && id !== stand ? text.replace(/ from 'vitest';/g, ` from '${stand}';`) : null;
    },
  };
  const server = await createServer({
    configFile: false,
    root,
    appType: 'custom',
    logLevel: 'error',
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true },
    // Another library of the tests writes on its prototype, which would last beyond the file that loads it.
    ssr: { noExternal: ['fraction.js'] },
    plugins: [plugin],
  });
  const runner = createServerModuleRunner(server.environments.ssr, { hmr: false, sourcemapInterceptor: false });
  keepCompiled(runner);
  return {
    forget: () => runner.clearCache(),
    async load(file) {
      const { gather } = await runner.import<Stand>(stand);
      return gather(path.join(root, file), () => runner.import(path.join(root, file)));
    },
    async loaded() {
      const modules = [...runner.evaluatedModules.idToModuleMap.keys()];
      const { takeKept } = await runner.import<Stand>(stand);
      return [...modules.filter((id) => id.startsWith(root) && !id.includes('node_modules')), ...takeKept()].map(place);
    },
    close: () => server.close(),
  };
}

type Runner = ReturnType<typeof createServerModuleRunner>;

/** A module is compiled once, however often it is run afresh. */
function keepCompiled(runner: Runner): void {
  const AsyncFunction = (async () => undefined).constructor as new (
    ...text: readonly string[]
  ) => (...put: readonly unknown[]) => Promise<void>;
  const compiled = new Map<string, InstanceType<typeof AsyncFunction>>();
  runner.evaluator = {
    runExternalModule: (place) => import(place),
    async runInlinedModule(context, code, { id }) {
      const names = Object.keys(context);
      const made = compiled.get(id) ?? new AsyncFunction(...names, `"use strict";${code}`);
      compiled.set(id, made);
      await made(...Object.values(context));
      Object.seal(context.__vite_ssr_exports__);
    },
  };
}
