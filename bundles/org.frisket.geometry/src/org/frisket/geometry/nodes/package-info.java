/**
 * Outlines as they are edited by hand: nodes with handles between which lines and cubics run. Everything is immutable;
 * an operation gives a new path and leaves the old one as it was. Lengths in mm, y down, in whatever frame the path is
 * in: all operations but those that compare lengths of handles mean the same in every frame.
 */
package org.frisket.geometry.nodes;
