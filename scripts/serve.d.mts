import type { Server } from 'node:http';

/** A server of the files in a folder, and of nothing else. */
export function staticServer(folder: string): Server;
