/** How much a file may hold before it is refused; a small file can unpack to more than a machine's memory. */
export interface Limits {
  readonly fileBytes: number;
  readonly parts: number;
  readonly partBytes: number;
  readonly totalBytes: number;
  readonly cells: number;
  readonly strings: number;
  readonly depth: number;
}

export const LIMITS: Limits = {
  fileBytes: 50e6,
  parts: 2000,
  partBytes: 300e6,
  totalBytes: 400e6,
  cells: 5e6,
  strings: 2e6,
  depth: 64,
};
