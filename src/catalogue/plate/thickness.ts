import { derived, input, procedure } from '../../core/define';
import { answer } from '../../core/answer';
import { Refusal } from '../../core/refusal';
import { solveBracketed } from '../../core/solve';
import { loadLength, loadWidth, plateMetal, pressure, PRESSED_PLATE, span, width } from './inputs';
import { plateSag } from './sag';

/** A plate beyond these, in spans, is none: foil, or a tower. */
const THINNEST = 1e-4;
const THICKEST = 10;

export const plateThickness = procedure({
  name: 'PLATE.THICKNESS',
  summary: 'Thickness of a plate on two rails that sags no more than is allowed.',
  inputs: [
    span,
    width,
    input('allowSag', 'z', 'length', {
      above: '0 mm',
      usual: ['0.001 mm', '0.5 mm'],
      says: 'Sag allowed in the middle of the span',
    }),
    pressure,
    loadLength,
    loadWidth,
    plateMetal,
  ],
  gives: 'length',
  method:
    'The thickness at which PLATE.SAG gives the allowed sag: solved between bounds by the ITP method, to the last digits, as bending falls with the cube of the thickness and shear with the thickness itself.',
  steps: {
    t: { gives: 'length', says: 'Thickness', equation: 'PLATE.SAG(span, width, t, …) = allowSag' },
    sigma: {
      gives: 'pressure',
      says: 'Bending stress of that plate in the middle',
      equation: 'sigma = 0.75*p*c*w*(2*L - c)/(b*t^2)',
    },
  },
  run: ({ span: L, width: b, allowSag, pressure: p, loadLength: c, loadWidth: w, metal }, show) => {
    const sag = (t: number): number => answer(plateSag, [L, b, t, p, c, w, metal], 'mm') as number;
    if (sag(THICKEST * L) > allowSag) {
      throw new Refusal(
        `cannot be kept: a plate ${THICKEST} times as thick as {span}, would sag more; put the rails or pillars closer, or allow more`,
        'allowSag',
      );
    }
    if (sag(THINNEST * L) < allowSag) {
      throw new Refusal('needs no thickness: any plate sags less', 'allowSag');
    }
    // On logarithmic scales the sag is nearly a straight line, which the solver follows in a few steps.
    const t = Math.exp(
      solveBracketed(
        (u) => Math.log(sag(Math.exp(u)) / allowSag),
        Math.log(THINNEST * L),
        Math.log(THICKEST * L),
      ),
    );
    show('t', t);
    show('sigma', (0.75 * p * c * w * (2 * L - c)) / (b * t ** 2));
    return t;
  },
  strength: [{ stress: 'sigma', of: 'metal' }],
  // The sag is A/t³ + B/t: with u = 1/t a cubic of one real root, u³ + P u = Q, by hyperbolic sines.
  native: ({ span: L, width: b, allowSag, pressure: p, loadLength: c, loadWidth: w, metal }, write) => {
    write.refuse(`${c.text}>${L.text}`, 'loadLength must not be longer than span');
    write.refuse(`${w.text}>${b.text}`, 'loadWidth must not be wider than width');
    const E = metal.bound('E');
    const W = write.step('W', `${p.text}*${c.text}*${w.text}`);
    const A = write.step('A', `${W}*(8*${L.text}^3-4*${L.text}*${c.text}^2+${c.text}^3)/(32*${E}*${b.text})`);
    const B = write.step(
      'B',
      `1.2*${W}*(2*${L.text}-${c.text})*2*(1+${metal.bound('nu')})/(8*${E}*${b.text})`,
    );
    const P = write.step('P', `${B}/${A}/3`);
    const t = write.step('t', `1/(2*SQRT(${P})*SINH(ASINH(${allowSag.text}/(2*${A}*${P}^1.5))/3))`);
    write.refuse(`${t}>${THICKEST}*${L.text}`, 'allowSag cannot be kept');
    write.refuse(`${t}<${THINNEST}*${L.text}`, 'allowSag needs no thickness');
    return t;
  },
  valid: [
    {
      holds: ({ span: L }, t) => (t as number) <= L / 1.5,
      says: 'The plate would be nearly as thick as its span: it is a block and no beam, and the thickness is a rough guide.',
    },
    {
      holds: ({ span: L, width: b, loadWidth: w }) => b <= w + L,
      says: 'The plate is wider than the patch and the span together: its edges help less than counted on; give a width of patch and span together.',
    },
    {
      holds: ({ allowSag }, t) => allowSag <= (t as number) / 4,
      says: 'The sag is large against the thickness: the equation is for small sags.',
    },
  ],
  sources: [derived('PLATE.SAG, beam bending and shear, solved for the thickness')],
  notes: ['Take the next thicker stock plate, and allow for what grinding and screw holes take.'],
  cautions: [{ says: PRESSED_PLATE }],
  related: ['PLATE.SAG', 'PLATE.PILLAR', 'FILL.VENT'],
});
