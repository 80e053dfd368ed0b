import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { findDefinition } from '../../src/call/findDefinition';
import { CellError } from '../../src/cells/value';
import { inputsOf } from '../../src/core/define';
import { SYSTEMS } from '../../src/core/quantity';
import { newDesign } from '../../src/forms/newDesign';
import { HOLDS, SCALE } from '../../src/forms/scale';
import { sections } from '../../src/forms/sections';
import { heldIn } from '../../src/forms/shotLog';
import { readReference } from '../../src/cells/reference';
import { cellFinder, type Workbook } from '../../src/package/model';

const faultsIn = (workbook: Workbook): string[] =>
  workbook.sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, formula, value }) => {
      if (formula === undefined) return [];
      if (value instanceof CellError)
        return [`${name} ${row + 1} ${formula}: ${value.code} ${value.message}`];
      const isVerdict = SCALE.some(([word]) => word === value);
      if (!isVerdict || value === HOLDS) return [];
      const label = cells.find((one) => one.row === row && one.column === 0)?.value;
      const note = cells.find((one) => one.row === row && one.column === 5)?.value;
      return [`${name} ${row + 1} ${String(label)}: ${String(value)} (${String(note)})`];
    }),
  );

/** What the cell of a name holds. */
function named(workbook: Workbook, wanted: string): number {
  const place = readReference(workbook.names.find(({ name }) => name === wanted)?.formula ?? '');
  const sheet = workbook.sheets.find(({ name }) => name === place?.sheet);
  return Number(sheet && place && cellFinder(sheet)(place.area.top, place.area.left)?.value);
}

describe('the sections', () => {
  it('take the shim off the pocket and count lift and margin where they count', async () => {
    const made = await newDesign({ sections, system: 'mm' }, worksheetFunctions);
    const value = (name: string): number => named(made, name);
    expect(value('shim')).toBeGreaterThan(0);
    expect(value('spring_travel')).toBeCloseTo(
      0.9 * (value('pocket_length') - value('shim') - value('solid_length')),
      9,
    );
    expect(value('daylight')).toBeCloseTo(
      value('opening') - value('stack_height') - value('part_depth') - value('lift') - value('hand'),
      9,
    );
    expect(value('pin_load')).toBeGreaterThan(3 * value('per_pin'));
    expect(value('per_pin') * value('pins')).toBeCloseTo(value('eject_force'), 9);
  });

  it('bind every argument of their functions to a key that there is, or leave an optional one out', () => {
    for (const { id, inputs, parts } of sections) {
      const keys = new Set(Object.keys(inputs));
      for (const part of parts) {
        if (part.type === 'use') {
          const args = inputsOf(findDefinition(part.fn));
          for (const { name, optional } of args) {
            const to = part.with[name] ?? (optional ? '""' : name);
            expect(keys.has(to) || to.startsWith('"'), `${id} ${part.fn} ${name}`).toBe(true);
          }
          for (const name of Object.keys(part.with)) expect(args.map((one) => one.name)).toContain(name);
        }
        if (part.type === 'shots')
          for (const [{ name }, key] of heldIn(part))
            expect(keys.has(key), `${id} ${part.fn} ${name}`).toBe(true);
        if (part.type === 'use' || part.type === 'worked') keys.add(part.key);
      }
    }
  });

  it('share an input only where it is one and the same thing', () => {
    const seen = new Map<string, string>();
    for (const { id, inputs } of sections) {
      for (const [key, { first, label }] of Object.entries(inputs)) {
        const thing = JSON.stringify({ first, label });
        expect(seen.get(key) ?? thing, `${id} ${key}`).toBe(thing);
        seen.set(key, thing);
      }
    }
  });

  for (const system of SYSTEMS) {
    it.each(sections.map((one) => [one.id, one] as const))(
      `%s is a design that holds, in ${system}`,
      async (_, section) => {
        expect(
          faultsIn(
            await newDesign(
              { sections: [section], system, exampleShots: system === 'in' },
              worksheetFunctions,
            ),
          ),
        ).toEqual([]);
      },
    );

    it(`hold together too, in ${system}`, async () => {
      expect(
        faultsIn(await newDesign({ sections, system, exampleShots: system === 'in' }, worksheetFunctions)),
      ).toEqual([]);
    });
  }
});
