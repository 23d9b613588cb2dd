/**
 * Art that has no pixels of its own and is drawn at any size: SVG by jsvg ({@link org.frisket.print.internal.drawn.SvgArt}),
 * pages of PDF by PDFBox ({@link org.frisket.print.internal.drawn.PdfArt}). Neither opens anything but the file that it is
 * given, runs what is in it, or draws without end.
 */
package org.frisket.print.internal.drawn;
