/**
 * Every dimension and its units. A row gives a unit as a ratio of two integers: how many of the SI unit one of it is.
 * Each export is a dimension and is named as the dimension is.
 *
 * Definitions: the SI brochure; international yard and pound (1959): 1 ft = 0.3048 m, 1 lb = 0.45359237 kg; standard gravity
 * 9.80665 m/s²; US gallon 231 in³; imperial gallon 4.54609 L; conventional columns of water (1000 kg/m³) and mercury
 * (13595.1 kg/m³); British thermal unit of the International Table; horsepower 550 ft·lbf/s; atomic weights of the CIAAW for CaCO₃ and CaO.
 */
import { dimension } from './dimension.js';

export const length = /* @__PURE__ */ dimension('length', {
  m: [1n, 1n], mm: [1n, 1000n], cm: [1n, 100n], km: [1000n, 1n], 'µm': [1n, 1000000n], in: [127n, 5000n], ft: [381n, 1250n], yd: [1143n, 1250n],
}, { metre: 'm', meter: 'm', inch: 'in', foot: 'ft', feet: 'ft' });

export const area = /* @__PURE__ */ dimension('area', {
  'm²': [1n, 1n], 'mm²': [1n, 1000000n], 'cm²': [1n, 10000n], 'in²': [16129n, 25000000n], 'ft²': [145161n, 1562500n], ha: [10000n, 1n], acre: [316160658n, 78125n],
}, { 'sq m': 'm²', 'sq ft': 'ft²', 'sq in': 'in²' });

export const volume = /* @__PURE__ */ dimension('volume', {
  L: [1n, 1000n], mL: [1n, 1000000n], 'm³': [1n, 1n], 'cm³': [1n, 1000000n], 'US gal': [473176473n, 125000000000n], 'imp gal': [454609n, 100000000n],
  'US fl oz': [473176473n, 16000000000000n], 'ft³': [55306341n, 1953125000n], 'in³': [2048383n, 125000000000n],
}, { l: 'L', ml: 'mL', litre: 'L', liter: 'L', 'cu ft': 'ft³' });

export const mass = /* @__PURE__ */ dimension('mass', {
  g: [1n, 1000n], mg: [1n, 1000000n], kg: [1n, 1n], t: [1000n, 1n], oz: [45359237n, 1600000000n], lb: [45359237n, 100000000n],
});

export const time = /* @__PURE__ */ dimension('time', {
  s: [1n, 1n], min: [60n, 1n], h: [3600n, 1n], d: [86400n, 1n],
}, { sec: 's', hr: 'h', hour: 'h', hours: 'h', minute: 'min', minutes: 'min', second: 's', seconds: 's', day: 'd', days: 'd' });

/** How often something happens: starts of a pump, air changes. */
export const frequency = /* @__PURE__ */ dimension('frequency', {
  '1/h': [1n, 3600n], '1/s': [1n, 1n], '1/min': [1n, 60n], '1/d': [1n, 86400n],
}, { 'per hour': '1/h', 'per day': '1/d', 'per minute': '1/min' });

export const flow = /* @__PURE__ */ dimension('flow', {
  'L/h': [1n, 3600000n], 'L/min': [1n, 60000n], 'L/s': [1n, 1000n], 'mL/min': [1n, 60000000n], 'm³/h': [1n, 3600n], 'm³/s': [1n, 1n],
  'US gal/min': [157725491n, 2500000000000n], 'US gal/h': [157725491n, 150000000000000n], 'imp gal/min': [454609n, 6000000000n], 'ft³/s': [55306341n, 1953125000n],
}, { 'l/h': 'L/h', 'l/min': 'L/min', 'l/s': 'L/s', 'ml/min': 'mL/min' });

export const velocity = /* @__PURE__ */ dimension('velocity', {
  'm/s': [1n, 1n], 'ft/s': [381n, 1250n], 'km/h': [5n, 18n],
});

const pressureUnits = {
  kPa: [1000n, 1n], Pa: [1n, 1n], hPa: [100n, 1n], MPa: [1000000n, 1n], bar: [100000n, 1n], mbar: [100n, 1n], psi: [8896443230521n, 1290320000n], atm: [101325n, 1n],
  'm H2O': [196133n, 20n], 'ft H2O': [74726673n, 25000n], inHg: [3386388640341n, 1000000000n], mmHg: [26664477483n, 200000000n],
} as const;

/** Pressure above the air around (gauge), or a difference of two pressures. */
export const pressure = /* @__PURE__ */ dimension('pressure', pressureUnits, { psig: 'psi' });

/** Pressure above vacuum: of the atmosphere, of water vapour, of the air in a closed tank. */
export const absolutePressure = /* @__PURE__ */ dimension('absolutePressure', pressureUnits, { psia: 'psi', 'bar abs': 'bar', 'kPa abs': 'kPa' });

/** Height of a column of the water itself. */
export const head = /* @__PURE__ */ dimension('head', { m: [1n, 1n], ft: [381n, 1250n] });

export const temperature = /* @__PURE__ */ dimension('temperature', {
  '°C': [1n, 1n, [5463n, 20n]], K: [1n, 1n], '°F': [5n, 9n, [45967n, 180n]],
}, { C: '°C', F: '°F' });

export const temperatureDifference = /* @__PURE__ */ dimension('temperatureDifference', {
  K: [1n, 1n], '°C': [1n, 1n], '°F': [5n, 9n],
});

export const massConcentration = /* @__PURE__ */ dimension('massConcentration', {
  'mg/L': [1n, 1000n], 'g/L': [1n, 1n], 'µg/L': [1n, 1000000n], ppm: [1n, 1000n], 'kg/m³': [1n, 1n],
  'g/US gal': [125000000n, 473176473n], 'oz/US gal': [368175625n, 49161192n], 'lb/US gal': [736351250n, 6145149n],
  'oz/100 US gal': [14727025n, 196644768n],
}, { 'mg/l': 'mg/L', 'g/l': 'g/L', 'ug/l': 'µg/L', 'g/m3': 'mg/L', 'g/m³': 'mg/L' });

export const amountConcentration = /* @__PURE__ */ dimension('amountConcentration', {
  'mmol/L': [1n, 1n], 'µmol/L': [1n, 1000n], 'mol/L': [1000n, 1n], 'mol/m³': [1n, 1n],
}, { 'mmol/l': 'mmol/L', 'umol/l': 'µmol/L', mM: 'mmol/L' });

export const chargeConcentration = /* @__PURE__ */ dimension('chargeConcentration', {
  'meq/L': [1n, 1n], 'eq/L': [1000n, 1n], 'µeq/L': [1n, 1000n],
}, { 'meq/l': 'meq/L', 'me/L': 'meq/L' });

/** Acid that the water can neutralise; as calcium carbonate (100.086 g/mol), or in German degrees (10 mg/L CaO, 56.077 g/mol). */
export const alkalinity = /* @__PURE__ */ dimension('alkalinity', {
  'meq/L': [1n, 1n], 'mg/L CaCO3': [1000n, 50043n], '°dH': [20000n, 56077n], 'mg/L HCO3': [1000n, 61017n],
}, { 'meq/l': 'meq/L', 'ppm CaCO3': 'mg/L CaCO3', dH: '°dH' });

/** Calcium and magnesium in water: by their charge, as calcium carbonate or in German degrees as above, or in mmol/L of both together. */
export const hardness = /* @__PURE__ */ dimension('hardness', {
  'meq/L': [1n, 1n], 'mmol/L': [2n, 1n], 'mg/L CaCO3': [1000n, 50043n], '°dH': [20000n, 56077n],
}, { 'meq/l': 'meq/L', 'mmol/l': 'mmol/L', 'ppm CaCO3': 'mg/L CaCO3', dH: '°dH' });

export const conductivity = /* @__PURE__ */ dimension('conductivity', {
  'mS/cm': [1n, 10n], 'µS/cm': [1n, 10000n], 'dS/m': [1n, 10n], 'S/m': [1n, 1n], 'mS/m': [1n, 1000n],
});

/** What a meter shows that turns conductivity into "ppm" by a fixed factor. Not a concentration. */
export const dissolvedSolidsReading = /* @__PURE__ */ dimension('dissolvedSolidsReading', { ppm: [1n, 1n], ppt: [1000n, 1n] });

export const density = /* @__PURE__ */ dimension('density', {
  'kg/m³': [1n, 1n], 'g/cm³': [1000n, 1n], 'g/mL': [1000n, 1n], 'kg/L': [1000n, 1n], 'g/m³': [1n, 1000n], 'lb/US gal': [736351250n, 6145149n], 'lb/ft³': [28349523125n, 1769802912n],
}, { 'g/ml': 'g/mL', 'kg/l': 'kg/L' });

export const dynamicViscosity = /* @__PURE__ */ dimension('dynamicViscosity', {
  'mPa·s': [1n, 1000n], 'Pa·s': [1n, 1n], cP: [1n, 1000n],
});

export const kinematicViscosity = /* @__PURE__ */ dimension('kinematicViscosity', {
  'mm²/s': [1n, 1000000n], 'm²/s': [1n, 1n], cSt: [1n, 1000000n],
});

export const energy = /* @__PURE__ */ dimension('energy', {
  kJ: [1000n, 1n], J: [1n, 1n], MJ: [1000000n, 1n], kWh: [3600000n, 1n], BTU: [52752792631n, 50000000n],
});

export const power = /* @__PURE__ */ dimension('power', {
  W: [1n, 1n], kW: [1000n, 1n], hp: [37284993579113511n, 50000000000000n], 'BTU/h': [52752792631n, 180000000000n],
});

export const irradiance = /* @__PURE__ */ dimension('irradiance', { 'W/m²': [1n, 1n], 'kW/m²': [1000n, 1n] });

export const radiationSum = /* @__PURE__ */ dimension('radiationSum', {
  'MJ/m²': [1000000n, 1n], 'J/cm²': [10000n, 1n], 'kWh/m²': [3600000n, 1n], 'J/m²': [1n, 1n],
});

/** Photons that plants can use, arriving per area and time. */
export const photonFlux = /* @__PURE__ */ dimension('photonFlux', { 'µmol/(m²·s)': [1n, 1000000n], 'mol/(m²·s)': [1n, 1n] }, { 'µmol/m²/s': 'µmol/(m²·s)', 'umol/m2/s': 'µmol/(m²·s)' });

/** Photons that plants can use, arriving per area in a day. */
export const dailyLight = /* @__PURE__ */ dimension('dailyLight', { 'mol/(m²·d)': [1n, 86400n] }, { 'mol/m²/d': 'mol/(m²·d)', 'mol/m2/d': 'mol/(m²·d)' });

export const heatTransfer = /* @__PURE__ */ dimension('heatTransfer', {
  'W/(m²·K)': [1n, 1n], 'BTU/(h·ft²·°F)': [52752792631n, 9290304000n],
}, { 'W/m²/K': 'W/(m²·K)', 'W/m2/K': 'W/(m²·K)' });

/** Mass of water vapour in a volume of air. */
export const absoluteHumidity = /* @__PURE__ */ dimension('absoluteHumidity', { 'g/m³': [1n, 1000n], 'kg/m³': [1n, 1n] });

/** Mass of water vapour per mass of dry air (humidity ratio) or of moist air (specific humidity). */
export const humidityRatio = /* @__PURE__ */ dimension('humidityRatio', { 'g/kg': [1n, 1000n], 'kg/kg': [1n, 1n] });

export const specificEnthalpy = /* @__PURE__ */ dimension('specificEnthalpy', { 'kJ/kg': [1000n, 1n], 'J/kg': [1n, 1n], 'MJ/kg': [1000000n, 1n], 'kWh/kg': [3600000n, 1n] });

export const specificVolume = /* @__PURE__ */ dimension('specificVolume', { 'm³/kg': [1n, 1n], 'L/kg': [1n, 1000n] });

/** How fast a vapour pressure, or a psychrometer's reading of it, changes with temperature. */
export const pressurePerTemperature = /* @__PURE__ */ dimension('pressurePerTemperature', { 'kPa/K': [1000n, 1n], 'Pa/K': [1n, 1n], 'kPa/°C': [1000n, 1n] });

/** A part of a whole. */
export const share = /* @__PURE__ */ dimension('share', { '%': [1n, 100n], fraction: [1n, 1n] }, { percent: '%' });

/** Rise (positive uphill) over length; head lost over length. */
export const slope = /* @__PURE__ */ dimension('slope', { '%': [1n, 100n], 'm/m': [1n, 1n], 'm/100 m': [1n, 100n], 'ft/100 ft': [1n, 100n] }, { percent: '%', 'ft/ft': 'm/m' });

/** Concentrate in the finished feed; also written as 1:100 (one part of concentrate in one hundred parts of feed). */
export const dilution = /* @__PURE__ */ dimension('dilution', { '%': [1n, 100n], fraction: [1n, 1n] }, { percent: '%' }, (text) => {
  const parts = /^1:(\d+(?:\.\d+)?)$/.exec(text)?.[1];
  return parts === undefined ? undefined : `${100 / Number(parts)} %`;
});

/**
 * Flow of water through a valve at unit pressure drop: Kv in m³/h at 1 bar (the base here), Cv in US gal/min at 1 psi.
 * One Cv in Kv is the irrational number √(0.22712470704² ÷ 0.0689475729…), written to 45 digits.
 */
export const flowCoefficient = /* @__PURE__ */ dimension('flowCoefficient', {
  Kv: [1n, 1n], Cv: [1351527586628596502085120546127363778231557n, 1562500000000000000000000000000000000000000n],
});

export const molarMass = /* @__PURE__ */ dimension('molarMass', { 'g/mol': [1n, 1000n], 'kg/mol': [1n, 1n] });

/** Of a latitude, positive to the north; the base here is the degree. */
export const angle = /* @__PURE__ */ dimension('angle', { '°': [1n, 1n] }, { deg: '°', degrees: '°' });

/** Water on an area: 1 L/m² is 1 mm. */
export const waterPerArea = /* @__PURE__ */ dimension('waterPerArea', { 'L/m²': [1n, 1000n], mm: [1n, 1000n], 'm³/ha': [1n, 10000n] }, { 'L/m2': 'L/m²' });

/** How fast plants or a surface give water off, by area. */
export const evaporationRate = /* @__PURE__ */ dimension('evaporationRate', {
  'mm/d': [1n, 86400000n], 'mm/h': [1n, 3600000n], 'L/(m²·d)': [1n, 86400000n], 'L/(m²·h)': [1n, 3600000n],
}, { 'L/m²/d': 'L/(m²·d)', 'L/m²/h': 'L/(m²·h)' });

/** Water that plants take up for the radiation that arrives: volume per energy. */
export const waterPerRadiation = /* @__PURE__ */ dimension('waterPerRadiation', { 'mL·cm²/(J·m²)': [1n, 10000000000n], 'L/MJ': [1n, 1000000000n] }, { 'mL/(J/cm²)/m²': 'mL·cm²/(J·m²)' });

/** What a vapour pressure deficit makes a crop give off, as latent heat by area. */
export const deficitResponse = /* @__PURE__ */ dimension('deficitResponse', { 'W/(m²·kPa)': [1n, 1000n] });

/** Photons for the energy that they carry. */
export const photonYield = /* @__PURE__ */ dimension('photonYield', { 'µmol/J': [1n, 1000000n] }, { 'umol/J': 'µmol/J' });

/** How hard it is for vapour or heat to get from a surface into the air. */
export const transferResistance = /* @__PURE__ */ dimension('transferResistance', { 's/m': [1n, 1n] });

export const massPerArea = /* @__PURE__ */ dimension('massPerArea', { 'g/m²': [1n, 1000n], 'kg/m²': [1n, 1n], 'kg/ha': [1n, 10000n] });

/** Temperature above a base, summed over time: degree-days. */
export const temperatureTime = /* @__PURE__ */ dimension('temperatureTime', { 'K·d': [86400n, 1n], 'K·h': [3600n, 1n], '°F·d': [48000n, 1n] }, { '°C·d': 'K·d', '°C·h': 'K·h' });

export const thermalConductivity = /* @__PURE__ */ dimension('thermalConductivity', { 'W/(m·K)': [1n, 1n] }, { 'W/m/K': 'W/(m·K)' });

/** Heat that passes for each kelvin between the two sides: UA. */
export const thermalConductance = /* @__PURE__ */ dimension('thermalConductance', { 'W/K': [1n, 1n] });

export const specificHeat = /* @__PURE__ */ dimension('specificHeat', { 'J/(kg·K)': [1n, 1n], 'kJ/(kg·K)': [1000n, 1n] });

/** Heat from a volume of fuel. */
export const energyPerVolume = /* @__PURE__ */ dimension('energyPerVolume', { 'kWh/L': [3600000000n, 1n], 'MJ/L': [1000000000n, 1n], 'kWh/m³': [3600000n, 1n], 'MJ/m³': [1000000n, 1n] });

/** Air through a house for each area of its floor. */
export const airExchange = /* @__PURE__ */ dimension('airExchange', { 'm³/(m²·s)': [1n, 1n], 'm³/(m²·h)': [1n, 3600n], 'ft³/(min·ft²)': [127n, 25000n] });
