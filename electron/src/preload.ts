import { contextBridge, ipcRenderer, webUtils } from 'electron';
import type { Call, Calls, Reply, Shell } from './contract.ts';

/** The bridge: one function for each call, nothing of Electron itself. */
const shell: Shell = {
  open: () => call('open'),
  openRecent: (token) => call('openRecent', token),
  recent: () => call('recent'),
  handedOver: () => call('handedOver'),
  // Only a file that the system dropped has a place: one made by the page has none.
  dropped: (file) => call('dropped', webUtils.getPathForFile(file)),
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
  close: () => call('close'),
  menu: (entries) => call('menu', entries),
  onCommand: (listener) => void ipcRenderer.on('command', (_event, id: string) => listener(id)),
};

async function call<C extends Call>(name: C, ...args: Parameters<Calls[C]>): Promise<Awaited<ReturnType<Calls[C]>>> {
  const reply: Reply<Awaited<ReturnType<Calls[C]>>> = await ipcRenderer.invoke(name, ...args);
  if (!reply.ok) throw new Error(reply.what);
  return reply.value;
}

contextBridge.exposeInMainWorld('shell', shell);
