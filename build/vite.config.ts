import { builtinModules } from 'node:module';
import path from 'node:path';
import { defineConfig, type EnvironmentOptions, type Plugin } from 'vite';
import solid from 'vite-plugin-solid';
import { licences } from './licences.ts';
import { preloadStart } from './preloadStart.ts';

const at = (place: string) => path.resolve(import.meta.dirname, '..', place);

interface NodeBuild {
  readonly input: string;
  readonly output: string;
  readonly format: 'es' | 'cjs';
  readonly target: string;
  /** Whether the folder is the build's own, so that it is emptied first. */
  readonly empties: boolean;
}

/** One file for Node or Electron: every package goes in, only Electron and Node's own modules stay outside. */
const nodeBuild = ({ input, output, format, target, empties }: NodeBuild): EnvironmentOptions => ({
  consumer: 'server',
  resolve: { noExternal: true, external: ['electron'] },
  build: {
    outDir: at(path.dirname(output)),
    emptyOutDir: empties,
    target,
    minify: false,
    copyPublicDir: false,
    rolldownOptions: {
      input: at(input),
      external: ['electron', /^node:/, ...builtinModules],
      output: { format, entryFileNames: path.basename(output), codeSplitting: false },
    },
  },
});

/**
 * Builds a worker as one more start of the page's own bundle, so that both load the same chunk of core; else Vite bundles
 * core a second time. The development server reads the address as it is written.
 */
const sharedWorkers: Plugin = {
  name: 'shared-workers',
  apply: 'build',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  transform(code, importer) {
    const address = /new URL\('(\.\/[^']+\.worker\.ts)', import\.meta\.url\)/g;
    if (!address.test(code)) return undefined;
    return code.replace(address, (_, place: string) => {
      const id = path.resolve(path.dirname(importer), place);
      return `import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'chunk', id, name: path.basename(place, '.ts') })}`;
    });
  },
};

/** Small files of core that the first view takes, and most later pages too: left apart, the names of their imports weigh as much as they. */
const TOGETHER = [
  {
    name: 'shopFile',
    test: /\bcore\/src\/(calendar|price|file\/(chemistryRow|day|envelope|fields|machine|material|migrate|mounted|prices|problems|quoteRecord|rack|ratioCheckRow|readWith|references|shaftTree|sheetRecord|shopFile|unfinishedCheck))\.ts$/,
  },
  {
    name: 'plan',
    test: /\bcore\/src\/(band|finding|format|given|layOut|mixRatio|plan|teethWords|train|chemistry\/(measures|systems))\.ts$/,
  },
];

export default defineConfig({
  root: at('renderer'),
  base: './',
  cacheDir: at('node_modules/.vite'),
  plugins: [
    solid(),
    sharedWorkers,
    licences,
    preloadStart,
    {
      // The development server puts styles inline; the built page does not, and keeps the strict policy.
      name: 'dev-csp',
      apply: 'serve',
      transformIndexHtml: (html) => html.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
    },
    {
      // The CSV reader asks for Node's streams only where it runs in Node.
      name: 'no-streams',
      enforce: 'pre',
      applyToEnvironment: ({ name }) => name === 'client',
      resolveId: (id) => (id === 'stream' ? '\0no-streams' : undefined),
      load: (id) => (id === '\0no-streams' ? 'export default {}' : undefined),
    },
  ],
  server: { host: '127.0.0.1', port: 5173, strictPort: true, fs: { allow: [at('.')] } },
  builder: {},
  environments: {
    client: {
      build: {
        outDir: at('dist/renderer'),
        emptyOutDir: true,
        // The window has a newer engine; the browser of a person without it may not.
        target: 'chrome146',
        modulePreload: {
          polyfill: false,
          // Pages that come later bring their scripts themselves; naming all of them would make the first file larger.
          resolveDependencies: (_, files, { hostType }) => (hostType === 'html' ? files : files.filter((file) => file.endsWith('.css'))),
        },
        assetsInlineLimit: 0,
        rolldownOptions: {
          checks: { pluginTimings: false },
          output: { codeSplitting: { includeDependenciesRecursively: false, groups: TOGETHER } },
          // A file of core does nothing on its own, so what the page does not use of it need not come along.
          treeshake: { moduleSideEffects: [{ test: /\bcore\/src\//, sideEffects: false }] },
        },
      },
    },
    main: nodeBuild({ input: 'electron/src/main.ts', output: 'dist/electron/main.js', format: 'es', target: 'node24', empties: true }),
    // A preload in the sandbox is one CommonJS file.
    preload: nodeBuild({
      input: 'electron/src/preload.ts',
      output: 'dist/electron/preload.cjs',
      format: 'cjs',
      target: 'node24',
      empties: false,
    }),
    command: nodeBuild({ input: 'core/cli/main.ts', output: 'dist/cli/ratiowright.js', format: 'es', target: 'node20', empties: true }),
  },
});
