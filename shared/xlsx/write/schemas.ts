const OPEN = "http://schemas.openxmlformats.org";

/** Namespaces of the parts of a workbook (ECMA-376, transitional). */
export const MAIN = `${OPEN}/spreadsheetml/2006/main`;
export const RELATIONSHIPS = `${OPEN}/officeDocument/2006/relationships`;
export const PACKAGE = `${OPEN}/package/2006`;
export const DRAWING = `${OPEN}/drawingml/2006/main`;
export const SHEET_DRAWING = `${OPEN}/drawingml/2006/spreadsheetDrawing`;
export const CHART = `${OPEN}/drawingml/2006/chart`;
export const CUSTOM_XML = `${OPEN}/officeDocument/2006/customXml`;
export const PROPERTIES = `${OPEN}/officeDocument/2006/extended-properties`;
