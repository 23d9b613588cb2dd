package org.frisket.ui.bench.internal.picture;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;
import org.frisket.model.OperationKind;

/**
 * What the bench shows of one element.
 *
 * @param curves     the clean contours and the open lines, true curves, in the job's frame
 * @param flat       the same as chords
 * @param hatching   lines that stand for a printed area; empty unless the element is printed
 * @param placement  the element's transform for which all this was made
 * @param operations what is done along the curves
 * @param placeholder whether the curves only stand for an element that could not be worked through
 * @param part       whether it is a part of a combination, which is not worked by itself
 * @param waste      whether it lies in the waste, so that it frees no piece
 * @param dashes     the curves of those operations that are worked in dashes
 * @param pixels     of a picture; null for all else
 * @param rim        of a picture with an edge; null for all else
 */
public record ElementPicture(Outline curves, FlatCurves flat, Outline hatching, Transform placement,
		Set<OperationKind> operations, boolean placeholder, boolean part, boolean waste,
		Map<OperationKind, Outline> dashes, Pixels pixels, PictureRim rim) {

	/** What is shown of an element that has not been worked through yet. */
	public static final ElementPicture NONE = new ElementPicture(Outline.EMPTY, new FlatCurves(Outline.EMPTY, 1),
			Outline.EMPTY, Transform.IDENTITY, Set.of());

	/** Of an element that was worked through. */
	public ElementPicture(Outline curves, FlatCurves flat, Outline hatching, Transform placement,
			Set<OperationKind> operations) {
		this(curves, flat, hatching, placement, operations, false, false, false, Map.of(), null, null);
	}

	public ElementPicture {
		operations = Collections.unmodifiableSet(
				operations.isEmpty() ? EnumSet.noneOf(OperationKind.class) : EnumSet.copyOf(operations));
		dashes = Map.copyOf(dashes);
	}

	public Bounds bounds() {
		return flat.bounds();
	}

	/** Around all that is painted, which of a picture is more than its contour. */
	public Bounds painted() {
		Bounds painted = pixels == null ? bounds() : bounds().with(pixels.box());
		return rim == null ? painted : painted.with(rim.bleed().bounds());
	}

	/** Whether a blade frees a piece of stock here, so that the area is shown in the colour of the stock. */
	public boolean isPiece() {
		return !part && !waste && (operations.isEmpty() || operations.contains(OperationKind.CUT)
				|| operations.contains(OperationKind.KISS_CUT));
	}

	/** The operations in the order in which their lines are painted; none of a part, whose line is its own. */
	public List<OperationKind> strokes() {
		if (part) {
			return List.of();
		}
		return operations.isEmpty() ? List.of(OperationKind.CUT) : List.copyOf(operations);
	}
}
