/** One breach of a house rule, with the place where it can be mended. */
export interface Fault {
  readonly path: string;
  readonly line: number;
  readonly says: string;
}

/** As an editor understands it: `path:line says`. */
export const printFault = (fault: Fault): string => `${fault.path}:${fault.line} ${fault.says}`;
