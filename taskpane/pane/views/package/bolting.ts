import { fieldsOf } from "../../../../shared/duty/fields.ts";
import { flangeFaces } from "../../../../shared/package/flange-faces.ts";
import { printedUnit } from "../../../../src/basis/quantities.ts";
import { flangeFacePicture } from "../../pictures/flange-face.ts";
import { packageStep } from "./package-step.ts";

export const bolting = packageStep({
  key: "bolting",
  title: "Flanges and bolting",
  fields: fieldsOf("bolting"),
  picture: (duty, width) => {
    const faces = flangeFaces(duty);
    return faces.length === 0 ? undefined : flangeFacePicture(faces, printedUnit("size", duty.unitSet), width);
  },
  missing: "State the size of a flange here and its class under “Pressure and flanges”.",
  caution:
    "The pump and gasket makers’ torque comes first. Bolts are tightened on a cold joint without pressure alone, crosswise and in steps.",
});
