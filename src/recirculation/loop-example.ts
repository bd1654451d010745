/** The loop of the teaching garden's strawberries: 18 m² of troughs on water with some salt. */
export const strawberryLoop = {
  loopVolume: '180 L',
  dailyWaterUse: '38 L',
  sourceWater: { ions: { 'Na+': '1.6 mmol/L', 'Cl-': '1.8 mmol/L', 'Ca2+': '1.1 mmol/L', 'HCO3-': '2 mmol/L' } },
  freshFeed: { ions: { 'K+': '3.3 mmol/L', 'Ca2+': '2.2 mmol/L', 'Mg2+': '0.8 mmol/L', 'NO3-': '6.2 mmol/L', 'H2PO4-': '0.8 mmol/L', 'SO4 2-': '0.9 mmol/L', 'HCO3-': '0.4 mmol/L' } },
  startingSolution: { ions: { 'K+': '3.2 mmol/L', 'Ca2+': '2.6 mmol/L', 'Mg2+': '1 mmol/L', 'Na+': '2.4 mmol/L', 'NO3-': '6.4 mmol/L', 'H2PO4-': '0.7 mmol/L', 'SO4 2-': '1.2 mmol/L', 'Cl-': '3.2 mmol/L' } },
  uptakeConcentrations: { 'K+': '3.2 mmol/L', 'Ca2+': '1.9 mmol/L', 'Mg2+': '0.7 mmol/L', 'NO3-': '6 mmol/L', 'H2PO4-': '0.7 mmol/L', 'SO4 2-': '0.7 mmol/L', 'Cl-': '0.5 mmol/L' },
  uptakeFactors: { 'Na+': 0.1 },
  ionLimits: { 'Na+': '6 mmol/L', 'Cl-': '8 mmol/L' },
} as const;

/** An example of what comes of it, asked for with more. */
export const inStrawberryLoop = <const More extends object>(more: More): typeof strawberryLoop & More => ({ ...strawberryLoop, ...more });
