/**
 * How people write one and the same thing, gathered by hand and not from the readers: twenty ways a designation.
 */

// prettier-ignore
export const THREAD_SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  '#8-32 UNC': [
    '8-32', '#8-32', '8-32 UNC', '#8-32 UNC', '8-32 UNC-2B', '#8-32 UNC 2A', '8/32', '8/32 UNC', 'No. 8-32', 'no 8 - 32',
    'No.8-32 UNC', 'number 8-32', '8 x 32', '8x32', '#8 x 32', '8–32', '8 32', '.164-32', '0.164-32 UNC', '# 8-32', '8-32NC', '#8 UNC',
    'UNC 8-32', '8-32 unc-3b', '8-32 LH',
  ],
  '#10-32 UNF': [
    '10-32', '#10-32', '10-32 UNF', '#10-32 UNF-2B', '10-32UNF', '10/32', '10/32 UNF', 'No. 10-32', 'no.10-32', 'NO 10-32 UNF-2A', '10 - 32',
    '10 x 32', '10X32', '10×32', '10 32', '.190-32', '.19-32', '#10 UNF', '10 NF', '#10 fine', 'UNF 10-32', '10-32 TPI',
  ],
  '#0-80 UNF': [
    '0-80', '#0-80', '0-80 UNF', '#0-80 UNF', '0-80UNF', '0/80', 'No. 0-80', 'no 0-80', 'number 0-80', '0 x 80', '0x80', '#0 UNF', '#0 x 80', '.060-80',
    '0.06-80', '0 - 80', '0–80', '0-80 NF', '0-80 unf-2a', '0 80',
  ],
  '1/4-20 UNC': [
    '1/4-20', '1/4-20 UNC', '1/4-20UNC', '1/4-20 UNC-2B', '1/4-20 UNC 2A', '1/4"-20', '1/4" - 20', '1/4 x 20', '1/4x20', '1/4×20', '1/4 - 20', '1/4–20', '¼-20',
    '¼"-20 UNC', '.250-20', '.25-20', '0.250-20 UNC', '1/4 20', '1/4”-20', '1/4 in-20', '1/4 in. - 20', '1/4 inch-20', '1/4 UNC', '1/4 NC', '1/4 coarse',
    '1/4-20 NC', '1/4-20 TPI', "1/4''-20", '1/4″-20', '1 / 4 - 20', '1⁄4-20', '1/4-20 UNC-2B-LH', '1/4*20',
  ],
  '5/16-24 UNF': [
    '5/16-24', '5/16-24 UNF', '5/16-24UNF', '5/16-24 UNF-2B', '5/16"-24', '5/16 x 24', '5/16x24', '5/16 - 24', '5/16 24', '.3125-24', '.312-24', '.313-24', '0.3125-24 UNF',
    '5/16 UNF', '5/16 NF', '5/16 fine', '5/16 in-24', '5/16″-24', 'UNF 5/16-24', '5/16-24 NF', '5/16–24 unf',
  ],
  '1-1/4-7 UNC': [
    '1-1/4-7', '1 1/4-7', '1 1/4-7 UNC', '1-1/4-7 UNC', '1-1/4-7 UNC-2B', '1 1/4"-7', '1-1/4"-7', '1-1/4 x 7', '1 1/4 x 7', '1¼-7', '1¼"-7', '1 ¼-7 UNC', '1.25-7', '1.250-7',
    '1.25-7 UNC', '1-1/4 - 7', '1 1/4 - 7', '1-1/4 UNC', '1 1/4 coarse', '1-1/4 7', '1 1/4 in-7', '1 - 1/4 - 7',
  ],
  '1-8 UNC': [
    '1-8', '1-8 UNC', '1-8UNC', '1-8 UNC-2B', '1"-8', '1" - 8', '1 x 8', '1x8', '1 - 8', '1–8', '1.0-8', '1.000-8', '1.00-8 UNC', '1" UNC', '1 in-8', '1 inch-8', '1" x 8', '1" NC', '1″-8',
    '1-8 NC', '1" coarse', 'UNC 1-8',
  ],
  M6: [
    'M6', 'm6', 'M 6', 'M6x1', 'M6x1.0', 'M6 x 1', 'M6 x 1.0', 'M6×1', 'M6*1', 'M6X1', 'M6-1', 'M6 - 1.0', 'M6-6H', 'M6x1-6g', 'M6 x 1.0 - 6H', 'M6x1 6H', 'M6-5g6g', 'M6x1-6H/6g', 'M6.0', 'M6 coarse', 'M6x1,0', 'ISO M6',
    'M6 1.0', 'M6x1 LH', 'M6×1.0–6H',
  ],
  'M10x1.25': [
    'M10x1.25', 'M10 x 1.25', 'M10X1.25', 'M10×1.25', 'M10 × 1.25', 'M10*1.25', 'M10-1.25', 'M10 - 1.25', 'M10–1.25', 'M10/1.25', 'M10 1.25', 'MF10x1.25', 'MF 10 x 1.25', 'm10x1.25', 'M10x1,25', 'M10x1.25-6H', 'M10 x 1.25 - 6g',
    'M10x1.250', 'M 10x1.25', 'M10.0x1.25', 'M10x1.25 fine', 'M10x1.25-6H LH',
  ],
  M3: [
    'M3', 'm3', 'M 3', 'M3x.5', 'M3x0.5', 'M3 x 0.5', 'M3×0.5', 'M3*0.5', 'M3-0.5', 'M3 - .5', 'M3X0.50', 'M3 0.5', 'M3-6H', 'M3x0.5-6H', 'M3 x 0.5 - 6g', 'M3x0,5', 'M3 coarse', 'M3.0', 'ISO M3', 'M3/0.5', 'M3–0.5',
  ],
};

/** What has two readings, or is not enough: refused, with these. */
// prettier-ignore
export const THREAD_CHOICES: Readonly<Record<string, readonly string[]>> = {
  '1/4': ['1/4-20 UNC', '1/4-28 UNF', '1/4-32 UNEF'],
  '8': ['#8-32 UNC', '#8-36 UNF', 'M8'],
  '10': ['#10-24 UNC', '#10-32 UNF', 'M10'],
  '1': ['#1-64 UNC', '1-8 UNC', '#1-72 UNF', '1-12 UNF', '1-20 UNEF', 'M1'],
  '#12': ['#12-24 UNC', '#12-28 UNF', '#12-32 UNEF'],
  'M10 fine': ['M10x1.25', 'M10x1', 'M10x0.75'],
  '10 coarse': ['#10-24 UNC', 'M10'],
  '1 UNC': ['#1-64 UNC', '1-8 UNC'],
};

/** By the name of the drill. */
// prettier-ignore
export const DRILL_SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  '#21': [
    '#21', '# 21', '21', '#021', 'No. 21', 'No 21', 'no.21', 'NO. 21', 'number 21', 'Number 21', 'No. #21', '#21 drill', 'wire 21', 'wire gauge 21', 'wire gage 21', 'gauge 21', '.159', '0.159', '.159"', '.1590', '0.159 in', '.159 inch', '.159”',
  ],
  F: [
    'F', 'f', 'letter F', 'Letter f', 'LETTER F', 'ltr F', 'ltr. f', 'size F', 'F drill', 'letter F drill', '.257', '0.257', '.257"', '0.2570', '.257 in', '0.257 inch', '.257”', ' F ', 'F-drill', 'Ø.257', 'ø 0.257"',
  ],
  '7/32': [
    '7/32', '7/32"', '7/32 "', '7/32 in', '7/32 in.', '7/32 inch', '7/32”', '7/32″', "7/32''", '7 / 32', '7⁄32', '7/32 drill', '7/32" drill', '14/64', '.21875', '0.21875', '.2188', '.21875"', '0.2188 in', 'Ø7/32', '⌀ 7/32"',
  ],
  '1-1/4': [
    '1-1/4', '1 1/4', '1-1/4"', '1 1/4"', '1 1/4 in', '1-1/4 in', '1¼', '1¼"', '1 ¼', '1.25', '1.250', '1.25"', '1.250 in', '1.25 inch', '1 1/4”', '1 - 1/4', '1-1/4 drill', 'Ø1-1/4"', '1 1/4 inch', '1 1⁄4"', '5/4',
  ],
  '5.0 mm': [
    '5.0 mm', '5 mm', '5mm', '5.0mm', '5.00 mm', '5 MM', '5.0MM', '5 Mm', 'Ø5 mm', 'Ø5mm', 'ø5.0 mm', '⌀5 mm', 'Ø 5 mm', '5 mm drill', '5mm drill', '5. mm', '05 mm', '5.000 mm', '0.5 cm', '5 mm dia', '5 mm dia.',
  ],
};

/** Fits: size (m, where one is written), hole, shaft. */
// prettier-ignore
export const FIT_SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  'H7/g6': [
    'H7/g6', 'H7 / g6', 'H7-g6', 'H7 - g6', 'H7 g6', 'H 7/g 6', 'H7 /g6', 'H7/ g6', 'H7–g6', 'H7⁄g6', ' H7/g6 ', 'H7  g6', 'H 7 g 6', 'H 7-g 6', 'H7—g6', 'H7 — g6', 'H7g6', 'H 7 / g 6', 'H7 –g6', 'H7- g6',
  ],
  '25 H7/g6': [
    '25H7/g6', '25 H7/g6', 'Ø25 H7/g6', 'Ø25H7/g6', '⌀25 H7/g6', 'ø25 H7/g6', 'Ø 25 H7/g6', '25 H7 g6', '25H7-g6', '25 H7-g6', '25mm H7/g6', '25 mm H7/g6', '25.0 H7/g6', '25.000H7/g6', '25 - H7/g6', '25-H7/g6', 'Ø25 H7 / g6', '∅25H7/g6', '25 H 7/g 6',
    'Φ25 H7/g6', '25. H7/g6',
  ],
};
/** Classes: size (mm, where one is written) and name. */
// prettier-ignore
export const CLASS_SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  H7: ['H7', ' H7', 'H7 ', 'H 7', ' H 7 ', 'H  7'],
  js6: ['js6', ' js6', 'js6 ', 'js 6', ' js 6 ', 'js  6'],
  '25 H7': [
    '25H7', '25 H7', 'Ø25 H7', 'Ø25H7', '⌀25 H7', 'ø25H7', 'Ø 25 H7', '25mm H7', '25 mm H7', '25.0 H7', '25.00H7', '25-H7', '25 - H7', '25 H 7', 'Φ25H7', '∅25 H7', '25mmH7', 'Ø25.0 H7', '25. H7', '25  H7',
  ],
  '8 m6': [
    '8m6', '8 m6', 'Ø8 m6', 'Ø8m6', '⌀8 m6', 'ø8m6', 'Ø 8 m6', '8mm m6', '8 mm m6', '8.0 m6', '8.00m6', '8-m6', '8 - m6', '8 m 6', 'Φ8m6', '∅8 m6', 'Ø8.0m6', '8. m6', '8  m6', '8.000 m6',
  ],
};

/** Metals as shops, certificates and catalogs write them. */
// prettier-ignore
export const METAL_SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  '6061-T6': [
    '6061', '6061-T6', '6061 T6', '6061T6', 'T6 6061', 'T6-6061', '6061-T651', '6061 T651', 'T651 6061', '6061-T6511', '6061 aluminum', '6061 aluminium',
    'aluminum 6061', 'aluminium 6061-T6', 'Al 6061', 'alu 6061', 'AL 6061-T6', '6061-t6 Aluminum', 'AA 6061', 'AA6061-T6', 'EN AW 6061 T6', '6061 alloy', '6061 plate',
  ],
  '7075-T6': ['7075', '7075-T6', '7075 T6', '7075T6', 'T6 7075', '7075-T651', '7075 T651', '7075 aluminum', 'aluminium 7075', 'Al 7075', 'alu 7075-T6', 'AA 7075', '7075 plate'],
  'P20 prehard': [
    'P20', 'p20', 'P-20', 'P 20', 'P20 steel', 'AISI P20', 'P20 prehard', 'prehard P20', 'P20 mold steel', 'P20 mould steel', 'P20 tool steel', '1.2311', 'P20 30 HRC',
    'P20 prehardened', 'p20 Prehard', 'P20, prehard', 'P20 (prehard)', 'steel P20', 'P20 plate', 'P20_prehard',
  ],
  'H13 annealed': ['H13', 'h13', 'H-13', 'H 13', 'H13 steel', 'AISI H13', 'H13 annealed', 'annealed H13', 'H13 tool steel', 'H13 soft', 'H13 (annealed)', 'H13, annealed'],
  'H13 48 HRC': ['H13 48 HRC', 'H13 hardened', 'hardened H13', 'H13 hard', '48 HRC H13', 'H13 steel hardened', 'H13, 48 HRC', 'H13-48 HRC'],
  '4140 annealed': ['4140', '4140 annealed', 'annealed 4140', 'AISI 4140', 'SAE 4140', '4140 steel', 'AISI-SAE 4140', '42CrMo4', '1.7225', '4140 alloy steel', '4140 bar', '4140 soft'],
  '4140 prehard': ['4140PH', '4140 PH', '4140-PH', '4140 prehard', 'prehard 4140', '4140HT', '4140 HT', '4140 30 HRC', '4140 28-32 HRC', '4140 prehardened', 'AISI 4140 prehard', '4140 QT'],
  A2: ['A2', 'a2', 'A-2', 'A 2', 'A2 steel', 'A2 tool steel', 'AISI A2', '1.2363', 'tool steel A2'],
  D2: ['D2', 'd2', 'D-2', 'D 2', 'D2 steel', 'D2 tool steel', 'AISI D2', '1.2379'],
  O1: ['O1', 'o1', 'O-1', 'O1 steel', 'O1 tool steel', 'AISI O1', '1.2510', 'oil hardening O1'],
  '1018': ['1018', '1018 CRS', 'CRS 1018', '1018 steel', 'AISI 1018', 'C1018', '1018 cold rolled', '1018 cold rolled steel', '1018 cold drawn', '1018 CD', 'mild steel', '1018 mild steel'],
  S50C: ['S50C', 's50c', 'S 50 C', 'S-50C', '1050', 'C50', '1.1210', 'S50C steel', 'AISI 1050'],
  '1045': ['1045', 'AISI 1045', 'C45', 'S45C', '1045 steel', '1.0503', 'C1045', '1045 carbon steel'],
  '304': ['304', '304 stainless', '304 SS', 'SS 304', 'AISI 304', 'stainless 304', '304 stainless steel', '1.4301', 'SUS304', '304L'],
  '17-4PH': ['17-4PH', '17-4 PH', '17-4', '17-4PH stainless', '17-4-PH', '17-4ph H1025', '630', '1.4542', 'S17400', '17-4 stainless'],
  '5083 cast plate': ['5083 cast plate', 'cast 5083', '5083', '5083 cast', '5083 aluminium', 'aluminum 5083', 'cast plate 5083', '5083 cast aluminum plate', '5083 cast tooling plate'],
  'beryllium copper': ['beryllium copper', 'BeCu', 'C17200', 'copper beryllium', 'CuBe2', 'Beryllium Copper', 'beryllium-copper'],
  C18000: ['C18000', 'c18000', 'beryllium-free copper', 'beryllium free copper', 'CuNi2SiCr', 'C18000 copper', 'copper C18000'],
  bronze: ['bronze', 'C932', 'SAE 660', 'bearing bronze', 'C93200', '660 bronze', 'bronze C932'],
  'cast iron': ['cast iron', 'gray iron', 'grey iron', 'gray cast iron', 'grey cast iron', 'class 30', 'class 30 gray iron', 'iron cast'],
  steel: ['steel', 'Steel', 'carbon steel', 'STEEL'],
};

/** Resins as data sheets and shops write them. */
// prettier-ignore
export const RESIN_SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  PP: ['PP', 'pp', 'polypropylene', 'PP homo', 'PP homopolymer', 'homopolymer PP', 'PP-H', 'natural PP', 'PP natural', 'unfilled PP', 'PP unfilled', 'PP resin', 'virgin PP'],
  'PP copolymer': ['PP copolymer', 'PP copo', 'copo PP', 'PP-C', 'PP impact copolymer', 'PP random copolymer', 'polypropylene copolymer', 'impact PP', 'PP copo natural'],
  'PP-GF30': ['PP-GF30', 'PP GF30', 'PPGF30', 'GF30 PP', 'PP GF 30', 'PP 30 GF', 'PP 30% GF', '30% glass filled PP', 'PP-GF 30'],
  HDPE: ['HDPE', 'hdpe', 'PE-HD', 'PEHD', 'high density polyethylene', 'high-density polyethylene', 'HDPE natural', 'polyethylene, high density'],
  LDPE: ['LDPE', 'ldpe', 'PE-LD', 'low density polyethylene', 'low-density polyethylene', 'LDPE natural', 'polyethylene (low density)'],
  PS: ['PS', 'GPPS', 'polystyrene', 'styrene', 'crystal styrene', 'general purpose polystyrene', 'PS natural'],
  ABS: ['ABS', 'abs', 'ABS natural', 'ABS resin', 'natural ABS', 'A B S', 'abs plastic'],
  PC: ['PC', 'pc', 'polycarbonate', 'PC natural', 'unfilled PC', 'PC resin'],
  'PC-GF20': ['PC-GF20', 'PC GF20', 'PCGF20', 'GF20 PC', 'PC 20% GF', 'PC GF 20', '20% glass filled polycarbonate', 'PC 20 GF'],
  'PC/ABS': ['PC/ABS', 'PC / ABS', 'ABS/PC', 'PC-ABS', 'PC ABS', 'pc/abs', 'PCABS', 'PC-ABS blend'],
  PA6: ['PA6', 'PA 6', 'PA-6', 'nylon 6', 'Nylon-6', 'polyamide 6', 'nylon6', 'PA6 natural', 'unfilled nylon 6'],
  'PA6-GF30': ['PA6-GF30', 'PA6 GF30', 'PA6GF30', 'PA 6 GF 30', 'PA6 30% GF', 'nylon 6 GF30', 'nylon 6, 30% glass', '30% glass filled nylon 6', 'PA6 30 GF'],
  PA66: ['PA66', 'PA 66', 'PA-66', 'PA 6/6', 'PA6/6', 'PA6.6', 'nylon 66', 'nylon 6/6', 'Nylon 6/6', 'nylon 6.6', 'polyamide 66', 'nylon 6-6', 'nylon 6/6 natural', 'unfilled PA66'],
  'PA66-GF30': [
    'PA66-GF30', 'PA66 GF30', 'PA66GF30', 'PA 66 GF 30', 'GF30 PA66', 'PA66 30% GF', 'PA66 30GF', 'PA66 30 GF', 'nylon 66 GF30', 'nylon 6/6 GF30', '30% glass filled nylon 66',
    'glass filled nylon 6/6', 'PA66-GF 30', 'pa66-gf30',
  ],
  POM: ['POM', 'acetal', 'acetal copolymer', 'POM-C', 'POM copolymer', 'polyacetal', 'copolymer acetal', 'POM natural', 'polyoxymethylene'],
  'POM homopolymer': ['POM homopolymer', 'acetal homopolymer', 'homopolymer acetal', 'POM-H', 'POM H'],
  PBT: ['PBT', 'pbt', 'PBT natural', 'unfilled PBT', 'PBT unfilled', 'polybutylene terephthalate', 'polyester PBT'],
  'PBT-GF30': ['PBT-GF30', 'PBT GF30', 'PBTGF30', 'GF30 PBT', 'PBT 30% GF', 'PBT 30 GF', '30% glass filled PBT'],
  PET: ['PET', 'pet', 'PET natural', 'polyethylene terephthalate', 'unfilled PET', 'polyester PET'],
  'PET-GF30': ['PET-GF30', 'PET GF30', 'PETGF30', 'GF30 PET', 'PET 30% GF', '30% glass filled PET'],
  PMMA: ['PMMA', 'pmma', 'acrylic', 'PMMA natural', 'acrylic resin', 'polymethyl methacrylate'],
  PVC: ['PVC', 'pvc', 'rigid PVC', 'PVC rigid', 'uPVC', 'PVC-U', 'PVC unfilled', 'polyvinyl chloride'],
};
