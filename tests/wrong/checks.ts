import { resinValueOf } from '../../src/catalogue/resin/value';
import { seatForce } from '../../src/catalogue/seat/force';
import { checks } from '../../src/core/checks';

/** Checks that the compiler refuses: a line without its error would itself be one. */

// @ts-expect-error an argument that the definition has not
checks(seatForce, [{ given: { pusch: '1 N' }, expect: '1 N', from: 'a fault made on purpose' }]);

// @ts-expect-error an argument that the table has not
checks(resinValueOf, [{ given: { plastic: 'PP' }, expect: 1, from: 'a fault made on purpose' }]);

// @ts-expect-error no check at all
checks(seatForce, []);

// @ts-expect-error a value without its source
checks(seatForce, [{ given: { push: '1 N' }, expect: '1 N' }]);
