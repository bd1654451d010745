/** Horticultural hydraulics and nutrient chemistry with typed units and named sources. */
export * from './calculation/index.js';
export * from './conductivity/index.js';
export * from './dosing/index.js';
export * from './greenhouse/index.js';
export * from './heat/index.js';
export * from './laterals/index.js';
export * from './light/index.js';
export * from './pressure-tank/index.js';
export * from './recirculation/index.js';
export * from './salts/index.js';
export * from './solution/index.js';
export * from './supply/index.js';
export * from './units/index.js';
export * from './vapour/index.js';
export * from './water/index.js';
