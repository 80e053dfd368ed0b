/**
 * Disc springs of DIN 2093 series A, as printed at xmdiscsprings.com/din_2093_disc_springs.html: outside and inside diameter,
 * thickness, cone height in mm; force at 0.75 of the cone height in N; stress at OM and largest tensile stress there in MPa.
 * The printed force belongs to a rounded deflection, so an exact one differs by up to 2.3 %.
 */
// prettier-ignore
export const DIN_2093_A = [
  [8, 4.2, 0.4, 0.2, 210, -1200, 1220], [10, 5.2, 0.5, 0.25, 329, -1210, 1240], [12.5, 6.2, 0.7, 0.3, 673, -1280, 1420],
  [14, 7.2, 0.8, 0.3, 813, -1190, 1340], [16, 8.2, 0.9, 0.35, 1000, -1160, 1290], [18, 9.2, 1, 0.4, 1250, -1170, 1300],
  [20, 10.2, 1.1, 0.45, 1530, -1180, 1300], [22.5, 11.2, 1.25, 0.5, 1950, -1170, 1320], [25, 12.2, 1.5, 0.55, 2910, -1210, 1410],
  [28, 14.2, 1.5, 0.65, 2850, -1180, 1280], [31.5, 16.3, 1.75, 0.7, 3900, -1190, 1320],
] as const;
