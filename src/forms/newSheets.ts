/** A design on sheets of its own: the one to work on, and one to hand on. */
import type { Workbook } from '../package/model';
import { FROZEN_ROWS, planDesign, type DesignWish } from './design';
import { newGround } from './groundOf';
import { planHandOn } from './handOn';
import type { DesignPlans, NewSheet } from './plan';

const DESIGN: Omit<NewSheet, 'name'> = {
  tabColor: '#24475C',
  frozen: FROZEN_ROWS,
  landscape: true,
  margins: { side: 0.5, top: 0.5, bottom: 0.6 },
};
const HAND_ON: Omit<NewSheet, 'name'> = { margins: { side: 0.7, top: 0.6, bottom: 0.7 } };

/** For a workbook that is there, whose names and sheets stay, or for a new one. */
export function planNewSheets(
  wish: DesignWish,
  workbook?: Workbook,
): DesignPlans & { readonly title: string } {
  const ground = newGround('Design', workbook);
  const { plan, lines, title } = planDesign(wish, ground);
  const { sheet } = newGround('Hand on', workbook);
  return {
    title,
    sheets: [
      { ...DESIGN, name: ground.sheet },
      { ...HAND_ON, name: sheet },
    ],
    plans: [plan, planHandOn(title, lines, sheet, ground.sheet)],
  };
}
