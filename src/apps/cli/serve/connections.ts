import type { Server, Socket } from 'node:net';

/**
 * Holds a server to so many connections at a time. Where one more comes, the oldest of the address that
 * holds most is closed, so that connections left open keep nobody out.
 */
export function limitConnections(server: Server, most: number): void {
  const held = new Map<Socket, string>();
  server.on('connection', (socket: Socket) => {
    held.set(socket, socket.remoteAddress ?? '');
    socket.once('close', () => held.delete(socket));
    if (held.size > most) oldestOfMost(held)?.destroy();
  });
}

function oldestOfMost(held: ReadonlyMap<Socket, string>): Socket | undefined {
  const counts = new Map<string, number>();
  for (const address of held.values()) counts.set(address, (counts.get(address) ?? 0) + 1);
  const [address] = [...counts].reduce((most, one) => (one[1] > most[1] ? one : most));
  return [...held].find(([, from]) => from === address)?.[0];
}
