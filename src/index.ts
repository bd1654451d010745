/** Horticultural hydraulics and nutrient chemistry with typed units and named sources. */
export * from './calculation/index.js';
export * from './units/index.js';
