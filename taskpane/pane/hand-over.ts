/** Hands a file to the browser to keep. */
export function handOver(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), PATIENCE);
}

/** ms; a browser may ask where the file is to go before it takes hold of it. */
const PATIENCE = 60_000;

/** What kind of file an .xlsx is. */
export const WORKBOOK_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
