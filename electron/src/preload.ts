import { contextBridge, ipcRenderer } from 'electron';
import type { Call, MenuCommand, Reply, Shell } from './contract.ts';

/** The bridge: one function for each call, nothing of Electron itself. */
const shell: Shell = {
  open: () => call('open'),
  openRecent: (token) => call('openRecent', token),
  recent: () => call('recent'),
  handedOver: () => call('handedOver'),
  save: (token, text, seen) => call('save', token, text, seen),
  saveAs: (suggestedName, text) => call('saveAs', suggestedName, text),
  opens: (token, seen) => call('opens', token, seen),
  autosave: (work) => call('autosave', work),
  dropAutosave: (id) => call('dropAutosave', id),
  autosaves: () => call('autosaves'),
  resume: (id) => call('resume', id),
  print: () => call('print'),
  savePdf: (suggestedName, paper) => call('savePdf', suggestedName, paper),
  unsaved: (unsaved, title) => call('unsaved', unsaved, title),
  onCommand: (listener) => void ipcRenderer.on('command', (_event, command: MenuCommand) => listener(command)),
};

async function call<C extends Call>(name: C, ...args: Parameters<Shell[C]>): Promise<Awaited<ReturnType<Shell[C]>>> {
  const reply: Reply<Awaited<ReturnType<Shell[C]>>> = await ipcRenderer.invoke(name, ...args);
  if (!reply.ok) throw new Error(reply.what);
  return reply.value;
}

contextBridge.exposeInMainWorld('shell', shell);
