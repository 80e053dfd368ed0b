import { Store } from '../../panel/store';
import { TAKE_OVER } from './version';

export interface Versions {
  /** A newer version of the page has come and waits. */
  readonly isThere: boolean;
}

const HOUR = 3_600_000;

/** Whether a newer version of the page is there. Where a browser keeps no pages, none ever is. */
export class Newer extends Store<Versions> {
  private registration: ServiceWorkerRegistration | undefined;

  constructor() {
    super({ isThere: false });
  }

  /** Keeps the page's files in the browser; `changes` is called when another version has taken over. */
  async watch(changes: () => void): Promise<void> {
    if (!('serviceWorker' in navigator)) return;
    const { serviceWorker } = navigator;
    // The first version takes over from none: nothing on the page is older than it.
    if (serviceWorker.controller) serviceWorker.addEventListener('controllerchange', changes, { once: true });
    // A browser may be told to keep nothing.
    const registration = await serviceWorker
      .register('worker.js', { updateViaCache: 'none' })
      .catch(() => undefined);
    if (!registration) return;
    this.registration = registration;
    this.look();
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', () => {
        this.look();
      });
    });
    setInterval(() => {
      // Without a network there is nothing newer to be had.
      registration.update().catch(() => undefined);
    }, HOUR);
  }

  /** Lets the newer version take over, in every tab. */
  take(): void {
    this.registration?.waiting?.postMessage(TAKE_OVER);
  }

  private look(): void {
    const isThere = navigator.serviceWorker.controller !== null && Boolean(this.registration?.waiting);
    if (isThere !== this.state.isThere) this.set({ isThere });
  }
}
