/**
 * Reads HP-GL and the vector part of HP-GL/2. {@code InstructionReader} cuts the file into instructions, {@code Plotter}
 * moves its pens as they say.
 */
package org.frisket.imports.hpgl;
