/**
 * Primary conductivity standards of potassium chloride: t in °C, conductivity in S/m at 0.01, 0.1 and 1 mol per kg of water, that of the water itself
 * taken off. Uncertain by 0.03 to 0.04 %. Source: Pratt et al. 2001, as printed in the CRC Handbook.
 */
export const potassiumChlorideStandards = [
  { celsius: 5, molal001: 0.089096, molal01: 0.81837, molal1: 7.203 },
  { celsius: 15, molal001: 0.114145, molal01: 1.04371, molal1: 8.99 },
  { celsius: 20, molal001: 0.127303, molal01: 1.16159, molal1: 9.917 },
  { celsius: 25, molal001: 0.140823, molal01: 1.28246, molal1: 10.862 },
  { celsius: 35, molal001: 0.168779, molal01: 1.5316, molal1: 12.797 },
  { celsius: 40, molal001: 0.183127, molal01: 1.6591, molal1: 13.781 },
  { celsius: 45, molal001: 0.197662, molal01: 1.78806, molal1: 14.772 },
  { celsius: 50, molal001: 0.212343, molal01: 1.91809, molal1: 15.767 },
] as const;

/**
 * Potassium chloride for setting a meter, 25 °C: mol/L and S/m, uncertain by 0.1 % or 1e-5 S/m.
 * Source: Standard Methods for the Examination of Water and Wastewater, method 2510, table of equivalent conductivities.
 */
export const potassiumChlorideMeterStandards25 = [
  { molar: 0.0005, conductivity: 0.00739 },
  { molar: 0.001, conductivity: 0.01469 },
  { molar: 0.005, conductivity: 0.07175 },
  { molar: 0.01, conductivity: 0.1412 },
  { molar: 0.02, conductivity: 0.2765 },
  { molar: 0.1, conductivity: 1.289 },
  { molar: 0.2, conductivity: 2.48 },
] as const;
