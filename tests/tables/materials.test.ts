import { describe, expect, it } from 'vitest';
import {
  cuttingSpeed,
  findWorkMaterial,
  kienzle,
  OPERATIONS,
  TOOLS,
  WORK_MATERIALS,
} from '../../src/tables/cutting';
import {
  findMetal,
  METAL_PROPERTIES,
  METALS,
  metalKind,
  metalSource,
  metalValue,
  propertyOf,
} from '../../src/tables/metals';
import { AmbiguousName, UnknownName } from '../../src/tables/names';
import { findResin, RESIN_PROPERTIES, RESINS, resinKind, resinValue } from '../../src/tables/resins';
import {
  findWire,
  WAVE_FACTORS,
  waveFactor,
  WIRES,
  wireModuli,
  wireRange,
  wireStrength,
} from '../../src/tables/springs';

describe('metals', () => {
  it.each(METALS.map((metal) => [metal.name, metal] as const))(
    '%s is possible and sourced',
    (name, metal) => {
      expect(findMetal(name)).toBe(metal);
      for (const alias of metal.aliases ?? []) {
        try {
          expect(findMetal(alias)).toBe(metal);
        } catch (error) {
          expect((error as AmbiguousName).choices).toContain(name);
        }
      }
      expect(metal.modulus).toBeGreaterThan(60e9);
      expect(metal.modulus).toBeLessThan(660e9);
      expect(metal.poisson).toBeGreaterThan(0.2);
      expect(metal.poisson).toBeLessThan(0.5);
      expect(metal.expansion).toBeGreaterThan(5e-6);
      expect(metal.expansion).toBeLessThan(25e-6);
      expect(metal.density).toBeGreaterThan(2600);
      expect(metal.density).toBeLessThan(15000);
      const { conductivity = 50, specificHeat = 500, tensile = Infinity } = metal;
      expect(conductivity).toBeGreaterThan(15);
      expect(conductivity).toBeLessThan(250);
      expect(specificHeat).toBeGreaterThan(200);
      expect(specificHeat).toBeLessThan(1000);
      if (metal.yield !== undefined) {
        expect(metal.yield / metal.modulus).toBeLessThan(0.01);
        expect(metal.yield).toBeLessThan(tensile);
      }
      for (const property of METAL_PROPERTIES)
        if (propertyOf(metal, property) !== undefined) expect(metal.sources[property]).toBeDefined();
    },
  );

  // Stiffness of a metal goes with its heat capacity by volume (Dulong and Petit: about 3R an atom, 2 to 4.2 MJ/(m³·K) in metals).
  it.each(METALS.map((metal) => [metal.name, metal] as const))(
    '%s stores as much heat as metals do',
    (_, metal) => {
      const volumetric = (metal.density * (metal.specificHeat ?? 460)) / 1e6;
      expect(volumetric).toBeGreaterThan(2);
      expect(volumetric).toBeLessThan(4.2);
    },
  );

  it.each([
    ['p-20', 'P20 prehard'],
    ['h 13', 'H13 annealed'],
    ['6061 t6', '6061-T6'],
    ['6061', '6061-T6'],
    ['C360', 'brass'],
    ['mild steel', '1018'],
    ['BeCu', 'beryllium copper'],
  ])('%s is %s', (given, name) => {
    expect(findMetal(given).name).toBe(name);
  });

  it('gives each property in SI with its kind, and refuses one it does not have', () => {
    for (const property of METAL_PROPERTIES) {
      expect(metalValue(findMetal('P20'), property).value, property).toBeGreaterThan(0);
      expect(metalKind(property)).toBeDefined();
    }
    expect(metalValue(findMetal('P20'), 'modulus').value).toBe(205e9);
    expect(metalValue(findMetal('6061-T6'), 'specific heat').value).toBe(896);
    expect(() => metalValue(findMetal('carbide'), 'yield')).toThrow('carbide');
  });

  it('does not guess which steel or aluminium is meant', () => {
    expect(findMetal('steel').yield).toBeUndefined();
    expect(() => metalValue(findMetal('steel'), 'yield')).toThrow('1018');
    expect(() => findMetal('aluminum')).toThrow('6061-T6, 7075-T6, 2024-T351 or 5083 cast plate');
    expect(() => findMetal('tool steel')).toThrow(AmbiguousName);
    expect(() => findMetal('P2O')).toThrow('P20');
  });

  it('marks as read only what the data sheets of P20 give', () => {
    expect(metalSource(findMetal('P20'), 'expansion').kind).toBe('secondhand');
    expect(metalSource(findMetal('P20'), 'poisson').kind).toBe('memory');
    expect(metalSource(findMetal('H13'), 'expansion').kind).toBe('memory');
    // zanotowane.pl/1031/1712: 6.8e-6/°F; round-bars.com: 12.7e-6/K.
    expect(findMetal('P20').expansion).toBeGreaterThan(6.8e-6 * 1.8);
  });
});

describe('resins', () => {
  it.each(RESINS.map((resin) => [resin.name, resin] as const))(
    '%s has every value, in order and sourced',
    (name, resin) => {
      expect(findResin(name)).toBe(resin);
      for (const property of RESIN_PROPERTIES) {
        const { value, source } = resinValue(resin, property);
        expect(value, property).toBeGreaterThanOrEqual(0);
        expect(source.cites, property).not.toBe('');
        expect(resinKind(property)).toBeDefined();
      }
      for (const { low, high } of Object.values(resin.values)) expect(high).toBeGreaterThanOrEqual(low);
      const { shrinkage, melt, mold, eject, noFlow, density, meltDensity, modulus, ejectModulus, vent } =
        resin.values;
      expect(shrinkage.high).toBeLessThanOrEqual(0.05);
      expect(mold.high).toBeLessThan(melt.low);
      expect(eject.low).toBeGreaterThan(mold.low);
      expect(eject.low).toBeLessThan(noFlow.low);
      expect(noFlow.high).toBeLessThan(melt.high);
      expect(meltDensity.low).toBeLessThan(density.low);
      expect(ejectModulus.low).toBeLessThan(modulus.low);
      expect(vent.low).toBeGreaterThan(0.005e-3);
      expect(vent.high).toBeLessThan(0.08e-3);
    },
  );

  // Effective and computed diffusivity differ by half to one and a half times, not more.
  it.each(RESINS.map((resin) => [resin.name, resin] as const))(
    '%s conducts as its conductivity and heat say',
    (_, { values }) => {
      const quotient = values.conductivity.low / (values.density.low * values.specificHeat.low);
      expect(values.diffusivity.low / quotient).toBeGreaterThan(0.45);
      expect(values.diffusivity.low / quotient).toBeLessThan(1.5);
    },
  );

  // Crawford, Plastics Engineering (3rd ed.), Table 1.8; a general molding guide (°F, %); vents (inches) at viewmold.com.
  it.each([
    ['PP', 'diffusivity', 0.065e-6],
    ['HDPE', 'density', 950],
    ['POM', 'conductivity', 0.2],
    ['ABS', 'shrinkage high', 0.009],
    ['PP', 'shrinkage', 0.018],
    ['PC', 'melt temperature', (520 + 459.67) / 1.8],
    ['PP', 'vent depth', 0.0005 * 0.0254],
    ['PMMA', 'vent depth high', 0.002 * 0.0254],
  ] as const)('%s %s is as printed', (name, property, value) => {
    const found = resinValue(findResin(name), property);
    expect(found.source.kind).toBe('secondhand');
    expect(Math.abs(found.value / value - 1)).toBeLessThan(0.002);
  });

  it('marks the least certain values as recalled', () => {
    for (const resin of RESINS) {
      for (const property of ['eject temperature', 'eject modulus', 'cavity pressure', 'friction'] as const) {
        expect(resinValue(resin, property).source.kind).toBe('memory');
      }
    }
  });

  it.each([
    ['polypropylene', 'PP'],
    ['Nylon 6/6', 'PA66'],
    ['acetal', 'POM'],
    ['pc / abs', 'PC/ABS'],
  ])('%s is %s', (given, name) => {
    expect(findResin(given).name).toBe(name);
  });

  it('asks which nylon, and corrects a typing error', () => {
    expect(() => findResin('nylon')).toThrow('PA6 or PA66');
    expect(() => findResin('PE')).toThrow('HDPE or LDPE');
    expect(() => findResin('PMNA')).toThrow('PMMA');
    expect(() => findResin('PMNA')).toThrow(UnknownName);
  });
});

describe('spring wires', () => {
  it.each(WIRES.map((wire) => [wire.name, wire] as const))(
    '%s loses strength with thickness and stays elastic',
    (name, wire) => {
      expect(findWire(name)).toBe(wire);
      const [from, upTo] = wireRange(wire);
      const sizes = Array.from({ length: 20 }, (_, i) => from + ((upTo - from) * i) / 19);
      for (const system of ['in', 'mm'] as const) {
        const strengths = sizes.map((size) => wireStrength(wire, size, system));
        // 0.5 %: rounded constants meet with a small step at 2.5 mm in 302 stainless.
        strengths.slice(1).forEach((value, i) => {
          expect(value).toBeLessThan((strengths[i] ?? 0) * 1.005);
        });
      }
      for (const size of sizes) {
        const { shear, elastic } = wireModuli(wire, size);
        const poisson = elastic / (2 * shear) - 1;
        expect(poisson).toBeGreaterThan(0.19);
        expect(poisson).toBeLessThan(0.42);
      }
    },
  );

  it.each(
    WIRES.filter(({ laws }) => laws.every((law) => 'm' in law)).map((wire) => [wire.name, wire] as const),
  )('%s has nearly the same strength by the constants of either system', (_, wire) => {
    const ratio = wireStrength(wire, 0.002, 'in') / wireStrength(wire, 0.002, 'mm');
    expect(Math.abs(ratio - 1)).toBeLessThan(0.006);
  });

  it('gives 1936 MPa for music wire of 2.5 mm (Shigley 10th ed., solution 10-3)', () => {
    expect(wireStrength(findWire('music wire'), 0.0025, 'mm') / 1e6).toBeCloseTo(1936, 0);
  });

  it('gives waves their factor', () => {
    expect([2, 3.5, 4, 4.5, 6.5, 7, 10, 15].map(waveFactor)).toEqual([
      3.88, 3.88, 3.88, 2.9, 2.9, 2.3, 2.13, 2.13,
    ]);
    expect(waveFactor(1)).toBeUndefined();
    const factors = WAVE_FACTORS.map(([, , factor]) => factor);
    expect(factors).toEqual([...factors].sort((a, b) => b - a));
  });
});

describe('cutting', () => {
  // HSS drilling and reaming, ft/min: handbook table at vm68.com/stuff/sfpm.html and protocutter.com.
  it.each([
    ['P20', 'drill', 60],
    ['P20', 'ream', 40],
    ['H13 annealed', 'drill', 60],
    ['H13 annealed', 'ream', 40],
    ['420 annealed', 'drill', 75],
    ['420 annealed', 'ream', 50],
  ] as const)('%s %s starts at %d ft/min', (metal, operation, speed) => {
    const found = cuttingSpeed(findWorkMaterial(metal), 'HSS', operation);
    expect((found.speed * 60) / 0.3048).toBeCloseTo(speed, 9);
    expect(found.source.kind).toBe('secondhand');
  });

  // VDI 3323 groups in a cutting tool catalogue of 2017, p. 558: MPa.
  it.each([
    ['6061-T6', 800, 0.25],
    ['P20', 1675, 0.24],
    ['H13 annealed', 2450, 0.23],
    ['420 annealed', 1875, 0.21],
    ['brass', 700, 0.27],
  ])('%s has kc1.1 %d MPa and mc %d', (metal, kc, mc) => {
    expect(kienzle(findWorkMaterial(metal))).toEqual({ kc: kc * 1e6, mc });
  });

  it.each(WORK_MATERIALS.map((work) => [work.name, work] as const))(
    '%s is faster with carbide, and harder is slower',
    (name, work) => {
      expect(findWorkMaterial(name)).toBe(work);
      const speeds = TOOLS.flatMap((tool) =>
        OPERATIONS.map((operation) => {
          try {
            return cuttingSpeed(work, tool, operation).speed;
          } catch {
            return undefined;
          }
        }),
      ).filter((speed) => speed !== undefined);
      expect(speeds.length).toBeGreaterThan(0);
      for (const speed of speeds) expect(speed).toBeGreaterThan(0.05);
      if (work.mill?.HSS) expect(work.mill.carbide[0]).toBeGreaterThan(work.mill.HSS[0]);
      if (work.sfm) expect(work.sfm[2]).toBeGreaterThan(work.sfm[1]);
    },
  );

  it('asks for the state of a steel and says what a missing speed could be replaced by', () => {
    expect(() => findWorkMaterial('420')).toThrow('420 annealed, 420 200 HB or 420 300 HB');
    expect(findWorkMaterial('H13').name).toBe('H13 annealed');
    expect(() => cuttingSpeed(findWorkMaterial('P20 30 HRC'), 'HSS', 'drill')).toThrow('carbide drill');
    expect(cuttingSpeed(findWorkMaterial('P20'), 'HSS', 'drill').row).toBe('P20 annealed');
    expect(kienzle(findWorkMaterial('S50C'))).not.toEqual(kienzle(findWorkMaterial('1018')));
    expect(() => cuttingSpeed(findWorkMaterial('H13 48 HRC'), 'HSS', 'drill')).toThrow('carbide mill');
    expect(() => kienzle(findWorkMaterial('H13 48 HRC'))).toThrow('specific cutting force');
  });
});
