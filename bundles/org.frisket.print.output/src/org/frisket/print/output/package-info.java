/**
 * The file that a sheet is printed from, and the file it is cut by, in one frame.
 * <p>
 * {@link org.frisket.print.output.SheetFaces} sorts what lies on a sheet by the side it is on,
 * {@link org.frisket.print.output.PrintSheet} says what is printed there, with bleed, marks and code,
 * {@link org.frisket.print.output.PrintFile} writes that as PDF, and {@link org.frisket.print.output.CutFace} is what is left
 * for blade, creasing tool and pen.
 */
package org.frisket.print.output;
