/**
 * Reads the lines and curves of ASCII DXF, releases 12 to 2018. {@code DrawingReader} makes a {@code Drawing} of group
 * codes and values; {@code DrawingArt} goes through its entities, blocks within blocks, and {@code EntityCurves} draws
 * each one.
 */
package org.frisket.imports.dxf;
