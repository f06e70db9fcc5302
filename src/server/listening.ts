import type { AddressInfo } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';
import type { FastifyInstance } from 'fastify';

/** The port where nothing else is said, and how many after it are tried. */
export const USUAL_PORT = 8377;
const PORTS_TRIED = 10;

export interface Place {
  /** `null`: the usual one, or one of the next where it is taken. */
  readonly port: number | null;
  /** For everybody on the network, and not only for this machine. */
  readonly isOnNetwork: boolean;
}

/** Begins to listen; answers the port. */
export async function listen(app: FastifyInstance, { port, isOnNetwork }: Place): Promise<number> {
  const host = isOnNetwork ? '0.0.0.0' : '127.0.0.1';
  const ports = port === null ? Array.from({ length: PORTS_TRIED }, (_, n) => USUAL_PORT + n) : [port];
  for (const [n, tried] of ports.entries()) {
    try {
      await app.listen({ host, port: tried, listenTextResolver: () => 'the server listens' });
      return (app.server.address() as AddressInfo).port;
    } catch (fault) {
      if ((fault as NodeJS.ErrnoException).code !== 'EADDRINUSE' || n === ports.length - 1) throw fault;
    }
  }
  throw new Error('no port was tried');
}

/** Addresses by which others on the network reach this machine; none where it is on no network. */
export const networkAddresses = (): readonly string[] =>
  Object.values(networkInterfaces())
    .flatMap((found) => found ?? [])
    .filter(
      ({ family, internal, address }) => family === 'IPv4' && !internal && !address.startsWith('169.254.'),
    )
    .map(({ address }) => address);

/** Names that are this machine's own. */
export const ownNames = (): readonly string[] => {
  const name = hostname().toLowerCase();
  return [name, `${name}.local`];
};
