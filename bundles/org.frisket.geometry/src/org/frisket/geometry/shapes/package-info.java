/** Shapes to start a design from, as SVG path data that a person can read. */
package org.frisket.geometry.shapes;
