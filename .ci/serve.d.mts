import type { Server } from 'node:http';

/** Resolves with the address once it listens; port 0 takes any free one. `folder` ends in '/'. */
export function serve(port: number, folder?: string): Promise<{ server: Server; address: string }>;
