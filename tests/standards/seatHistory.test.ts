import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seatMillPush } from '../../src/catalogue/seat/millPush';
import { seatRelease } from '../../src/catalogue/seat/release';
import { seatSink } from '../../src/catalogue/seat/sink';
import { seatSlideBack } from '../../src/catalogue/seat/slideBack';
import { seatStep } from '../../src/catalogue/seat/step';
import { seatStiffness } from '../../src/catalogue/seat/stiffness';
import { CellError } from '../../src/cells/value';
import { ask, askNumber } from '../support/ask';
import { turnsTrue } from '../support/numeric';

const DEGREE = Math.PI / 180;

interface Case {
  readonly draft: number;
  readonly friction: number;
  readonly radius: number;
  readonly length: number;
  readonly block: number;
  readonly insertModulus: number;
  readonly blockModulus: number;
}

const POISSON = 0.3;

/**
 * A seat that remembers: a radial spring from what a ring and a plug give way, and flanks that stick until friction is
 * used up, one way or the other. Nothing but the balance of one flank at each step of load.
 */
class CoulombSeat {
  sink = 0;

  constructor(private readonly of: Case) {}

  /** Radial force of all the flanks at a sink: the interference of x tan α, taken up by ring and plug. */
  private radial(sink: number): number {
    const { draft, radius: r, length, block: b, insertModulus, blockModulus } = this.of;
    // Ring under p from inside: its bore grows by p r/E ((b² + r²)/(b² − r²) + ν). Plug under p: p r (1 − ν)/E.
    const give =
      (r / blockModulus) * ((b ** 2 + r ** 2) / (b ** 2 - r ** 2) + POISSON) +
      (r / insertModulus) * (1 - POISSON);
    const pressure = (sink * Math.tan(draft * DEGREE)) / give;
    return pressure * 2 * Math.PI * r * length;
  }

  /** Axial load that the flank bears at a sink when friction points up (+1, sliding in) or down (−1), fully used. */
  private borne(sink: number, way: 1 | -1, friction = this.of.friction): number {
    const [sin, cos] = [Math.sin(this.of.draft * DEGREE), Math.cos(this.of.draft * DEGREE)];
    // Normal force N and friction ±µN of the flank, from the radial balance N cos α − T sin α = S.
    const normal = this.radial(sink) / (cos - way * friction * sin);
    return normal * sin + way * friction * normal * cos;
  }

  /** Slowly brought to a load: moves only as far as friction lets it. */
  bring(load: number): void {
    if (this.borne(this.sink, 1) < load) {
      this.sink = turnsTrue((x) => this.borne(x, 1) >= load, this.sink, 1e4);
    } else if (this.borne(this.sink, -1) > load) {
      this.sink = turnsTrue((x) => this.borne(x, -1) >= load, 0, this.sink);
    }
  }

  /** Pull against the taper that breaks it loose at its present sink, with a friction of its own; below 0 it is loose. */
  release(friction: number): number {
    return -this.borne(this.sink, -1, friction);
  }
}

const cases = fc.record({
  draft: fc.double({ min: 1, max: 30, noNaN: true }),
  friction: fc.double({ min: 0, max: 0.6, noNaN: true }),
  radius: fc.double({ min: 3, max: 40, noNaN: true }),
  length: fc.double({ min: 5, max: 40, noNaN: true }),
  block: fc.double({ min: 45, max: 120, noNaN: true }),
  insertModulus: fc.double({ min: 6e4, max: 2.2e5, noNaN: true }),
  blockModulus: fc.double({ min: 6e4, max: 2.2e5, noNaN: true }),
});
const push = fc.double({ min: 10, max: 8000, noNaN: true });

const seatOf = ({ draft, friction, radius, length, block, insertModulus, blockModulus }: Case) =>
  [draft, friction, radius, length, block, insertModulus, blockModulus] as const;

/** Away from the draft at which a seat just locks, where rounding decides. */
const decided = ({ draft, friction }: Case): boolean =>
  Math.abs(Math.tan(draft * DEGREE) / friction - 1) > 1e-6;

const same = (a: number, b: number, size: number): void => {
  expect(Math.abs(a - b)).toBeLessThan(1e-9 * size);
};

describe('a tapered seat that is loaded step by step', () => {
  it('stands where SEAT.STEP says, through any history of loads', () => {
    fc.assert(
      fc.property(
        cases.filter(decided),
        push,
        fc.array(fc.double({ min: 0, max: 8000, noNaN: true }), { minLength: 2, maxLength: 8 }),
        (seat, injection, loads) => {
          const simulated = new CoulombSeat(seat);
          const stiffness = askNumber(seatStiffness, ...seatOf(seat), 'mm');
          const sink = askNumber(seatSink, injection, ...seatOf(seat), null, null, 'mm');
          same(stiffness * sink, injection, injection);
          for (const load of loads) {
            // All that a seat remembers is how far down it is: the push that would have set it there is its seating push.
            const seated = stiffness * simulated.sink;
            simulated.bring(load);
            const step = askNumber(seatStep, injection, load, ...seatOf(seat), seated, 'mm');
            same(sink - step, simulated.sink, sink + 8000 / stiffness);
          }
        },
      ),
    );
  });

  it('is set by no less than SEAT.MILLPUSH, however it was driven home before', () => {
    fc.assert(
      fc.property(
        cases.filter(decided),
        push,
        push,
        fc.double({ min: -0.5, max: 1, noNaN: true }),
        (seat, injection, seating, part) => {
          const sink = askNumber(seatSink, injection, ...seatOf(seat), null, null, 'mm');
          const wanted = part * sink;
          const answer = ask(seatMillPush, injection, wanted, ...seatOf(seat), seating, 'mm');
          const simulated = new CoulombSeat(seat);
          simulated.bring(seating);
          if (answer instanceof CellError) {
            // It locks below where it is wanted, and no push brings it up again.
            expect(answer.message).toContain('the seating push alone leaves a step of');
            simulated.bring(0);
            expect(simulated.sink).toBeGreaterThan(sink - wanted);
            return;
          }
          simulated.bring(Number(answer));
          same(sink - simulated.sink, wanted, sink + simulated.sink);
          // A little less would not do: it slides back, or was never pressed so far.
          const less = new CoulombSeat(seat);
          less.bring(seating);
          less.bring(Number(answer) * 0.99);
          if (Number(answer) > 1e-6 * injection && Math.abs(less.sink - simulated.sink) < 1e-9 * sink)
            // But where it was driven exactly so far, it stays: of a seat that locks any smaller push will do.
            expect(Math.abs(seating / Number(answer) - 1)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it('starts to slide back at SEAT.SLIDEBACK, and is freed by SEAT.RELEASE', () => {
    fc.assert(
      fc.property(
        cases.filter(decided),
        push,
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        (seat, seating, atRelease) => {
          const simulated = new CoulombSeat(seat);
          simulated.bring(seating);
          const { sink } = simulated;
          const back = askNumber(seatSlideBack, seating, seat.draft, seat.friction, 'mm');
          const pull = askNumber(seatRelease, seating, seat.draft, seat.friction, atRelease, 'mm');
          same(Math.max(0, simulated.release(atRelease)), pull, seating);
          simulated.bring(Math.min(back * 1.001, seating));
          same(simulated.sink, sink, sink);
          if (back > 1e-3 * seating) {
            simulated.bring(back * 0.99);
            expect(simulated.sink).toBeLessThan(sink * 0.995);
          }
        },
      ),
    );
  });
});
