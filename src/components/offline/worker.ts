/// <reference lib="webworker" />
/**
 * The service worker: keeps every file of one build, so that after one visit the site works without a network. A new build
 * is fetched whole before it takes the old one's place, so that no page is ever put together from two builds.
 */
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';
import { takeOver } from './message.ts';

declare const self: ServiceWorkerGlobalScope;
/** Every file of the build, put in when the site is built; no revision where the name holds one. */
declare const BUILT_FILES: { url: string; revision: string | null }[];

// What stands behind a question mark names no other file on a static host.
precacheAndRoute(BUILT_FILES, { cleanURLs: false, ignoreURLParametersMatching: [/.*/] });
cleanupOutdatedCaches();

self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('message', ({ data }) => {
  if (data === takeOver) void self.skipWaiting();
});
