declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** °C, 0..1, Pa -> kg/kg */
    GetHumRatioFromRelHum(dryBulb: number, relativeHumidity: number, pressure: number): number;
    /** °C, 0..1, Pa -> °C */
    GetTWetBulbFromRelHum(dryBulb: number, relativeHumidity: number, pressure: number): number;
    /** °C, kg/kg, Pa -> Pa */
    GetVaporPressureDeficit(dryBulb: number, humidityRatio: number, pressure: number): number;
  };
  export default psychrolib;
}
