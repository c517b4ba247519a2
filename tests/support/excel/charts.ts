import type { MemoryChart, MemorySheet } from "../memory-sheet.ts";
import { checkedAddress, refFrom, refOf } from "./addresses.ts";
import { LIMITS } from "./limits.ts";
import type { Book, Members, Node, NodeOf } from "./node.ts";
import { invalid, problem } from "./problems.ts";
import { checkOpen } from "./protection.ts";
import { between, type Check, checkValue, isColor, oneOf } from "./values.ts";

const CHART_TYPES = oneOf(
  "XYScatter",
  "XYScatterSmooth",
  "XYScatterSmoothNoMarkers",
  "XYScatterLines",
  "XYScatterLinesNoMarkers",
);

export const CHARTS: Members<"charts"> = {
  steps: {
    add: ({ sheet }, [type, source, by], book) => {
      checkOpen(book, sheet);
      checkValue("chart type", type, CHART_TYPES);
      if (refOf(source) === "" || !oneOf("Auto", "Columns", "Rows")(by)) throw invalid("chart source");
      const series = Array.from({ length: book.guessedSeries }, (_, i) => ({ name: `Series${i + 1}`, set: {} }));
      const chart: MemoryChart = { id: book.newId("chart"), series, set: { type } };
      sheet.charts.push(chart);
      return { kind: "chart", sheet, chart };
    },
    "": ({ sheet }, [id]) => {
      const chart = sheet.charts.find((one) => one.id === id);
      if (chart === undefined) throw problem("ItemNotFound", `no chart ${String(id)}`);
      return { kind: "chart", sheet, chart };
    },
  },
};

const part =
  (path: string) =>
  ({ sheet, chart }: { readonly sheet: MemorySheet; readonly chart: MemoryChart }): Node => ({
    kind: "bag",
    sheet,
    path,
    set: (key, value) => {
      chart.set[`${path}.${key}`] = value;
    },
  });

export const CHART: Members<"chart"> = {
  steps: {
    series: ({ sheet, chart }) => ({ kind: "seriesList", sheet, chart }),
    title: part("title"),
    legend: part("legend"),
    axes: ({ sheet, chart }) => ({ kind: "axes", sheet, chart }),
  },
  calls: {
    setPosition: ({ sheet, chart }, cells, book) => {
      checkOpen(book, sheet);
      for (const cell of cells) if (cell !== null) checkedAddress(refOf(cell));
      chart.position = cells;
      return null;
    },
  },
};

export const AXES: Members<"axes"> = {
  steps: {
    valueAxis: part("valueAxis"),
    categoryAxis: part("categoryAxis"),
    getItem: (node, [type, group]) => {
      const drawn = node.chart.series.some(({ set }) => set["axisGroup"] === group);
      if (!drawn) throw problem("ItemNotFound", "no series is on that axis");
      return part(`${String(type)} ${String(group)}`)(node);
    },
  },
};

export const SERIES_LIST: Members<"seriesList"> = {
  steps: {
    add: ({ sheet, chart }, [name], book) => {
      checkOpen(book, sheet);
      const series = { name: String(name), set: {} };
      chart.series.push(series);
      return { kind: "series", sheet, chart, series };
    },
    getItemAt: ({ sheet, chart }, [index]) => {
      const series = chart.series[Number(index)];
      if (series === undefined) throw problem("ItemNotFound", `no series ${String(index)}`);
      return { kind: "series", sheet, chart, series };
    },
  },
  reads: { count: ({ chart }) => chart.series.length },
};

const setting =
  (key: string, check: Check) =>
  ({ sheet, series }: NodeOf<"series">, value: unknown, book: Book): void => {
    checkOpen(book, sheet);
    checkValue(`series.${key}`, value, check);
    series.set[key] = value;
  };

const [SMALLEST, LARGEST] = LIMITS.markerSize;

export const SERIES: Members<"series"> = {
  steps: {
    format: ({ sheet, series }) => ({
      kind: "bag",
      sheet,
      path: "seriesFormat",
      set: (key, value) => {
        series.set[key] = value;
      },
    }),
  },
  calls: {
    setValues: ({ sheet, series }, [range], book) => {
      checkOpen(book, sheet);
      series.y = refFrom(sheet, range);
      return null;
    },
    setXAxisValues: ({ sheet, series }, [range], book) => {
      checkOpen(book, sheet);
      series.x = refFrom(sheet, range);
      return null;
    },
    delete: ({ sheet, chart, series }, _, book) => {
      checkOpen(book, sheet);
      chart.series.splice(chart.series.indexOf(series), 1);
      return null;
    },
  },
  settings: {
    chartType: setting("chartType", CHART_TYPES),
    axisGroup: setting("axisGroup", oneOf("Primary", "Secondary")),
    markerStyle: setting(
      "markerStyle",
      oneOf("Automatic", "None", "Square", "Diamond", "Triangle", "X", "Star", "Dot", "Dash", "Circle", "Plus"),
    ),
    markerSize: setting("markerSize", between(SMALLEST, LARGEST)),
    markerBackgroundColor: setting("markerBackgroundColor", isColor),
    markerForegroundColor: setting("markerForegroundColor", isColor),
  },
};
