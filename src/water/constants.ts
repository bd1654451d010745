/** 0 °C in K, exactly. */
export const zeroCelsius = 273.15;

/** Triple point of water in K: liquid, ice and vapour together. Below it the choice between ice and supercooled water matters. */
export const triplePointTemperature = 273.16;

/** Vapour pressure at the triple point, in Pa (IAPWS R14-08(2011); IAPWS-95 itself gives 611.6548). */
export const triplePointPressure = 611.657;

/** Critical temperature of water, in K (IAPWS R2-83(1992)). */
export const criticalTemperature = 647.096;

/** Critical pressure of water, in Pa (IAPWS R2-83(1992)). */
export const criticalPressure = 22.064e6;

/** One standard atmosphere, in Pa, exactly. */
export const standardAtmosphere = 101325;
