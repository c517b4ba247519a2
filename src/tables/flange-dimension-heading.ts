/** Columns of the dimensions of flanges in printed order; inches but where the name ends in Mm. */
export const FLANGE_HEADING =
  "nps dn outside outsideMm circle circleMm bolts boltSize hole raisedFace steel steelMm ductile stud machineBolt gasketInside gasketOutside";
