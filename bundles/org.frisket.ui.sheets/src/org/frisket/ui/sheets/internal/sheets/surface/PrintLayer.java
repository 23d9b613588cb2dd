package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Image;
import org.frisket.geometry.Outline;
import org.frisket.model.Sheet;

/** What of print and cuts is seen on the surface. Only for the UI thread. */
public interface PrintLayer {

	/**
	 * What is printed on a sheet, and lines to look at.
	 *
	 * @param image   of the whole sheet, seen through where nothing is printed; whoever has it disposes it
	 * @param printed whether anything is printed on it
	 * @param safe    in mm on the sheet
	 * @param borders in mm on the sheet
	 */
	record Print(Image image, boolean printed, List<Outline> safe, List<Outline> borders) {
	}

	/**
	 * Empty if it is not wanted, not known yet, or nothing; one that is coarser than wanted is made anew meanwhile.
	 *
	 * @param scale wanted, pixels in a mm
	 */
	Optional<Print> of(Sheet sheet, double scale);

	/** Whether the print of a sheet is seen, so that parts on it are drawn as lines alone. */
	boolean isSeen(Sheet sheet);

	/** Whether it is seen what is done on parts. */
	boolean cutsShown();
}
