/**
 * What works a stock: blades, pens and wheels, and the machines that hold them. All values are described by
 * {@link org.frisket.geometry.options.Option}, so that forms, flags and stored texts are the same. Lengths in mm, angles
 * in degrees, cut lengths in m, pressure in grams-force and speed in mm/s where a machine's own steps are not meant.
 */
package org.frisket.material.tools;
