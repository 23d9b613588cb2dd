package org.frisket.ui.print.internal.output;

import java.util.List;

import org.eclipse.swt.graphics.ImageData;
import org.frisket.print.output.WorkLine;

/**
 * One side of a sheet as it comes out of the printer, with what is worked on it.
 *
 * @param number   of the sheet, from 1
 * @param back     whether it is its back, seen as the sheet is turned over
 * @param twoSided whether anything is printed or worked on the back
 * @param width    of the sheet, mm @param height of it
 * @param print    all of the sheet, with its marks; seen through where nothing is; null if nothing is printed on
 * this side
 * @param work     where it lies on the print
 * @param measured whether the file to cut follows marks that were measured
 */
record Face(int number, boolean back, boolean twoSided, double width, double height, ImageData print, List<WorkLine> work,
		boolean measured) {
}
