import type { Univer } from "@univerjs/core";
import { CellAlertManagerService } from "@univerjs/preset-sheets-core";

/** The grid's own words on an error, shown over a cell under the pointer. */
const OF_ERRORS = "SHEET_FORMULA_ALERT";

/** Leaves the words on an error to the line under the grid, which says more; every other alert of the grid stays. */
export function leaveErrorsToStrip(univer: Univer): void {
  const alerts = univer.__getInjector().get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    if (alert.key !== OF_ERRORS) show(alert);
  };
}
