export interface Served {
  /** "http://127.0.0.1:3001", without a slash at the end. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

export function serve(folder: string, port?: number): Promise<Served>;
export function serveNear(folder: string, wanted: number, say: (text: string) => void): Promise<Served>;
