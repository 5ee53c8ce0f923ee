import { builtinModules } from 'node:module';
import path from 'node:path';
import { defineConfig } from 'vite';

const at = (place: string) => path.resolve(import.meta.dirname, '..', place);

export default defineConfig({
  root: at('core'),
  cacheDir: at('node_modules/.vite'),
  builder: { buildApp: async (builder) => void (await builder.build(builder.environments.command)) },
  environments: {
    command: {
      consumer: 'server',
      resolve: { noExternal: true },
      build: {
        outDir: at('dist/cli'),
        emptyOutDir: true,
        target: 'node20',
        minify: false,
        copyPublicDir: false,
        rolldownOptions: {
          input: at('core/cli/main.ts'),
          external: [/^node:/, ...builtinModules],
          output: { format: 'es', entryFileNames: 'ratiowright.js', codeSplitting: false },
        },
      },
    },
  },
});
