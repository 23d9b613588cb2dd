package org.frisket.ui.bench.internal.looks;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Path;
import org.frisket.model.OperationKind;
import org.frisket.ui.bench.internal.picture.ElementPicture;

/** An element as a look finds it: its picture, and its curves as paths in the units of the ground. */
public interface Shown {

	ElementPicture picture();

	/** The colour of the stock. */
	Color stock();

	/** Of a picture; null for all else. */
	ShownPixels pixels();

	/** Where the print of a picture ends beyond its contour; null if it has no bleed there. */
	Path bleed();

	/** All clean curves. */
	Path curves();

	/** Of the clean curves, those that enclose something. */
	Path closed();

	/** Of the clean curves, those that stay open; null if there are none. */
	Path open();

	/** The dashes that an operation is worked in; null if its lines are whole. */
	Path dashes(OperationKind kind);

	/** Lines that stand for a printed area. */
	Path hatching();

	/** The curves before they were cleaned; null while that is not known. */
	Path source();

	/** What cleaning took away of them; null while that is not known. */
	Path removed();
}
