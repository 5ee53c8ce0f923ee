import { randomUUID } from 'node:crypto';
import { EventEmitter } from 'node:events';
import type { BrowserWindowConstructorOptions, PrintToPDFOptions, Rectangle, WebContentsPrintOptions } from 'electron';
import type { BrowserContext, Frame, Page, Route } from 'playwright-core';
import { INVOKE, preloadScript } from './preload.ts';
import { granted, requestPasses, type Stage } from './stage.ts';
import { decode, encode } from './wire.ts';

/** Those a page can ask a browser about. */
const PERMISSIONS = ['geolocation', 'notifications', 'camera', 'microphone', 'clipboard-read'];

/** An event whose default a listener may prevent, as Electron's are. */
export function preventable<T extends object>(details: T) {
  const event = {
    ...details,
    defaultPrevented: false,
    preventDefault() {
      event.defaultPrevented = true;
    },
  };
  return event;
}

type OpenHandler = (details: { readonly url: string }) => { readonly action: 'allow' | 'deny' };

export class StandInContents extends EventEmitter {
  openHandler: OpenHandler = () => ({ action: 'allow' });

  constructor(
    readonly window: StandInWindow,
    readonly stage: Stage,
  ) {
    super();
  }
  setWindowOpenHandler(handler: OpenHandler): void {
    this.openHandler = handler;
  }
  getURL(): string {
    return this.window.publicAddress(this.window.page.url());
  }
  setWebRTCIPHandlingPolicy(policy: string): void {
    this.stage.log.push(['rtc', policy]);
  }
  send(channel: string, ...args: unknown[]): void {
    this.stage.log.push(['send', channel, ...args]);
    void this.window.deliver(channel, encode(args));
  }
  print(options: WebContentsPrintOptions, done: (printed: boolean, reason: string) => void): void {
    const { pageSize, usePrinterDefaultPageSize } = options;
    if ((pageSize === undefined) === (usePrinterDefaultPageSize !== true)) throw new Error('either a page size or that of the printer');
    this.stage.log.push(['print', options]);
    const failure = this.stage.printFailures.shift();
    done(failure === undefined, failure ?? '');
  }
  /** With Electron's defaults: Letter, 0.4 inch, no background, no size from the style sheet. */
  async printToPDF(options: PrintToPDFOptions): Promise<Buffer> {
    this.stage.log.push(['printToPDF', options]);
    const { pageSize = 'Letter' } = options;
    return this.window.page.pdf({
      ...(typeof pageSize === 'string' ? { format: pageSize } : { width: `${pageSize.width}in`, height: `${pageSize.height}in` }),
      printBackground: options.printBackground ?? false,
      preferCSSPageSize: options.preferCSSPageSize ?? false,
      tagged: options.generateTaggedPDF ?? false,
      margin: { top: '0.4in', bottom: '0.4in', left: '0.4in', right: '0.4in' },
    });
  }
}

export class StandInWindow extends EventEmitter {
  readonly webContents: StandInContents;
  readonly #deliverName = randomUUID();
  #context: BrowserContext | null = null;
  #page: Page | null = null;
  title = '';
  edited = false;
  shown = false;
  focused = 0;
  minimized = false;
  maximized = false;
  bounds: Rectangle;
  destroyed = false;
  /** The stand-in's own first step to the page, which no page asked for. */
  #loading = false;

  constructor(
    readonly options: BrowserWindowConstructorOptions,
    readonly stage: Stage,
    readonly gone: (window: StandInWindow) => void,
  ) {
    super();
    if (!stage.ready) throw new Error('Cannot create BrowserWindow before app is ready');
    const { x = 10, y = 20, width = 800, height = 600 } = options;
    this.bounds = { x, y, width, height };
    this.webContents = new StandInContents(this, stage);
  }

  get page(): Page {
    if (this.#page === null) throw new Error('the window shows no page');
    return this.#page;
  }

  /** A browser does not go to a scheme it does not know: `app://host/x` is shown as `http://host.app.localhost/x`, which is secure too. */
  #browserAddress(address: string): string {
    const url = new URL(address);
    const scheme = url.protocol.slice(0, -1);
    return this.stage.privileges.has(scheme) ? `http://${url.host}.${scheme}.localhost${url.pathname}${url.search}${url.hash}` : address;
  }
  publicAddress(address: string): string {
    const [, host, scheme, rest = '/'] = /^http:\/\/([^./]+)\.([a-z]+)\.localhost(\/.*)?$/.exec(address) ?? [];
    return scheme !== undefined && this.stage.privileges.has(scheme) ? `${scheme}://${host}${rest}` : address;
  }

  async loadURL(address: string): Promise<void> {
    const { preload, ...preferences } = this.options.webPreferences ?? {};
    const { sandbox = true, contextIsolation = true, nodeIntegration = false, webSecurity = true, webviewTag = false } = preferences;
    if (!sandbox || !contextIsolation || nodeIntegration || !webSecurity || webviewTag) throw new Error('insecure webPreferences');
    const context = await this.stage.browser.newContext({
      viewport: { width: this.options.width ?? 800, height: this.options.height ?? 600 },
      locale: this.stage.choices.locale ?? 'en-US',
      bypassCSP: this.stage.choices.bypassPolicy ?? false,
    });
    this.#context = context;
    await context.grantPermissions(PERMISSIONS.filter((permission) => granted(this.stage, permission)));
    const page = await context.newPage();
    this.#page = page;
    context.on('page', (other) => void this.#refuseOrLog(other));
    // A page that was let open reaches nothing either.
    await context.route('**/*', (route) => route.abort());
    await page.route('**/*', (route) => this.#answer(route));
    await page.exposeBinding(INVOKE, ({ frame }, channel: string, args: string) => this.#call(frame, channel, args));
    if (preload !== undefined)
      await page.addInitScript({ content: await preloadScript(preload, this.#deliverName, this.stage.choices.droppable ?? {}) });
    this.#loading = true;
    await page.goto(this.#browserAddress(address));
    this.#loading = false;
    this.emit('ready-to-show');
  }

  async deliver(channel: string, args: string): Promise<void> {
    await this.page.evaluate(([name, to, what]) => Reflect.get(globalThis, name)(to, what), [this.#deliverName, channel, args] as const);
  }

  async #call(frame: Frame, channel: string, sent: string): Promise<{ error?: string; value: string }> {
    const handler = this.stage.handlers.get(channel);
    const args = decode(sent);
    const senderFrame = { url: this.publicAddress(frame.url()), parent: frame.parentFrame() };
    this.stage.log.push(['invoke', channel, ...args]);
    try {
      if (handler === undefined) throw new Error(`No handler registered for '${channel}'`);
      return { value: encode([await handler({ sender: this.webContents, senderFrame }, ...args)]) };
    } catch (error) {
      return { error: `Error invoking remote method '${channel}': ${error}`, value: '' };
    }
  }

  async #refuseOrLog(other: Page): Promise<void> {
    const url = this.publicAddress(other.url());
    await other.close();
    this.stage.log.push(['window-open', url, this.webContents.openHandler({ url }).action]);
  }

  async #answer(route: Route): Promise<void> {
    const request = route.request();
    const url = this.publicAddress(request.url());
    if (request.isNavigationRequest() && !this.#loading && this.#mayNotGo(url, request.frame())) return route.abort('aborted');
    if (!requestPasses(this.stage, url)) {
      this.stage.log.push(['cancelled', url]);
      return route.abort('blockedbyclient');
    }
    const serve = this.stage.schemes.get(new URL(url).protocol.slice(0, -1));
    if (serve === undefined) {
      // Nothing ever leaves the machine; that the app let it pass is on record.
      this.stage.log.push(['network', url]);
      return route.abort('internetdisconnected');
    }
    const response = await serve(new Request(url, { method: request.method(), headers: request.headers() }));
    await route.fulfill({
      status: response.status,
      headers: Object.fromEntries(response.headers),
      body: Buffer.from(await response.arrayBuffer()),
    });
  }

  #mayNotGo(url: string, frame: Frame): boolean {
    const isMainFrame = frame === this.page.mainFrame();
    const event = preventable({ url, isMainFrame });
    this.webContents.emit('will-frame-navigate', event);
    if (isMainFrame) this.webContents.emit('will-navigate', event);
    this.stage.log.push(['navigate', url, event.defaultPrevented]);
    return event.defaultPrevented;
  }

  isDestroyed(): boolean {
    return this.destroyed;
  }
  getNormalBounds(): Rectangle {
    return this.bounds;
  }
  isMaximized(): boolean {
    return this.maximized;
  }
  maximize(): void {
    this.maximized = true;
  }
  show(): void {
    this.shown = true;
  }
  focus(): void {
    this.focused += 1;
  }
  isMinimized(): boolean {
    return this.minimized;
  }
  restore(): void {
    this.minimized = false;
  }
  setTitle(title: string): void {
    this.title = title;
  }
  setDocumentEdited(edited: boolean): void {
    this.edited = edited;
  }
  close(): void {
    const event = preventable({});
    this.emit('close', event);
    if (!event.defaultPrevented) this.destroy();
  }
  destroy(): void {
    if (this.destroyed) return;
    this.destroyed = true;
    this.emit('closed');
    this.gone(this);
  }
  /** Closes the page as well, which Electron does by itself; what is still asked by a closing page goes unanswered. */
  async end(): Promise<void> {
    this.destroy();
    const context = this.#context;
    this.#context = null;
    await this.#page?.unrouteAll({ behavior: 'ignoreErrors' });
    await context?.unrouteAll({ behavior: 'ignoreErrors' });
    await context?.close();
    this.#page = null;
  }
}
