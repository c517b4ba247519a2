/**
 * A range for what is sent with the next sync alone. The library would otherwise have Excel keep hold of each range, a
 * call more, until the run ends.
 */
export function rangeAt(sheet: Excel.Worksheet, address: string): Excel.Range {
  return sheet.getRange(address).untrack();
}

/** The formats of several areas, for the same sync; areas asked for twice are named to Excel once. */
export function formatsOf(sheet: Excel.Worksheet): (address: string) => Excel.RangeFormat {
  const named = new Map<string, Excel.RangeFormat>();
  return (address) => {
    const format = named.get(address) ?? sheet.getRanges(address).untrack().format;
    named.set(address, format);
    return format;
  };
}
