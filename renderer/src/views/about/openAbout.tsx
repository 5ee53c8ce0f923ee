import { render } from 'solid-js/web';
import { type App, AppProvider } from '../../state/app.ts';
import { AboutView } from './AboutView.tsx';
import { readLicences } from './licences.ts';

/** Opens the About view over the page; closing it leaves nothing behind. Rejects where the list of licences cannot be read. */
export async function openAbout(app: App): Promise<void> {
  const licences = await readLicences();
  const before = document.activeElement;
  const place = document.createElement('div');
  document.body.append(place);
  const close = () => {
    end();
    place.remove();
    if (before instanceof HTMLElement) before.focus();
  };
  const end = render(
    () => (
      <AppProvider value={app}>
        <AboutView licences={licences} onClose={close} />
      </AppProvider>
    ),
    place,
  );
  place.querySelector('dialog')?.showModal();
}
