/**
 * The service worker of the page: keeps one whole version of its files, and answers from them with or without a network.
 * A version is taken only when every file has come and is the one that was built; the next one waits until it is wanted.
 */
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';
import { TAKE_OVER, type VersionedFile } from './version';

/** Put in by `webpack/plugins/offline.js`. */
declare const FILES: VersionedFile[];

/** Of the worker's own world, which the types of a page do not know. */
const worker = self as unknown as {
  skipWaiting(): Promise<void>;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
};

precacheAndRoute(FILES);
cleanupOutdatedCaches();
worker.addEventListener('message', ({ data }) => {
  if (data === TAKE_OVER) void worker.skipWaiting();
});
