import type { HtmlTagDescriptor, Plugin } from 'vite';

/** The page first asks which language it speaks and only then imports what says anything: that is fetched while it asks. */
export const preloadStart: Plugin = {
  name: 'preload-start',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (html, { bundle = {} }) => {
      const named = new Set<string>();
      const follow = (name: string) => {
        const part = bundle[name];
        if (part?.type !== 'chunk' || part.isEntry || named.has(name) || html.includes(name)) return;
        named.add(name);
        part.imports.forEach(follow);
      };
      const start = Object.values(bundle).find((part) => part.type === 'chunk' && part.name === 'start');
      if (start === undefined) throw new Error('the bundle has no start to preload');
      follow(start.fileName);
      return [...named].map(
        (name): HtmlTagDescriptor => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `./${name}` },
          injectTo: 'head',
        }),
      );
    },
  },
};
