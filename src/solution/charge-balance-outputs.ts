import * as output from '../calculation/output.js';
import { chargeConcentration, share } from '../units/dimensions.js';

/** What a calculation tells of a balance of charges. */
export const chargeBalanceOutputs = () => ({
  cations: output.quantity(chargeConcentration, 'meq/L'),
  anions: output.quantity(chargeConcentration, 'meq/L'),
  imbalance: output.quantity(chargeConcentration, 'meq/L'),
  relativeImbalance: output.quantity(share, '%'),
});
