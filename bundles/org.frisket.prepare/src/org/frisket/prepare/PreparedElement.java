package org.frisket.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.lines.Dashes;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.Element;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.PenStyle;
import org.frisket.model.Picture;
import org.frisket.model.Wording;
import org.frisket.prepare.pictures.PictureSource;

/**
 * What an element comes to: its clean region and the lines that enclose nothing, both in the job's frame with the
 * element's own transform applied.
 *
 * @param element   the element of the model it was made from
 * @param region    the closed part, clean
 * @param lines     contours that stayed open, and lines for the pen, of which some may be closed
 * @param uncleaned the same before cleaning
 * @param part      whether it is a part of a combination, so that it is not worked by itself
 * @param xHeight   height of the smallest letters in mm, of a wording that has any
 * @param findings  what the steps noticed on the way
 */
public record PreparedElement(Element element, Region region, List<Contour> lines, Uncleaned uncleaned, boolean part,
		OptionalDouble xHeight, List<Finding> findings) {

	public PreparedElement {
		lines = List.copyOf(lines);
		findings = List.copyOf(findings);
	}

	/** The same elsewhere: what it comes to is moved, the element of the model is not. */
	public PreparedElement moved(Transform by) {
		return new PreparedElement(element, region.transformed(by),
				lines.stream().map(line -> line.transformed(by)).toList(), uncleaned.placed(by), part, xHeight, findings);
	}

	/** Whether there is nothing of it but lines for the pen, which are never cut. */
	public boolean isPenLettering() {
		// outlines leave no lines; those of a font of single lines do
		return element instanceof Wording wording && (wording.getPenStyle() != PenStyle.OUTLINE || !lines.isEmpty());
	}

	/** The pixels it is made of; empty for what is no picture, or one that cannot be read. */
	public Optional<PreparedPicture> picture() {
		if (!(element instanceof Picture picture) || uncleaned.curves().isEmpty() || Placeholder.isUnread(this)) {
			return Optional.empty();
		}
		return Optional.ofNullable(PictureSource.of(picture).bytes()).map(bytes -> new PreparedPicture(bytes,
				PictureSource.page(picture), Transform.scaling(picture.getWidth(), picture.getHeight())
						.then(uncleaned.placement())));
	}

	/**
	 * What of its pixels is printed, if these are but some pieces of a picture that was parted to be laid out: theirs and
	 * their bleed. Empty where all of it is.
	 */
	public Optional<Region> printedPieces() {
		if (isWithoutEdge() || !(element instanceof Picture picture)
				|| region.contours().size() >= uncleaned.curves().contours().size()) {
			return Optional.empty();
		}
		double bleed = picture.getBleed() * Math.sqrt(Math.abs(uncleaned.placement().determinant()));
		return Optional.of(Offset.of(region, bleed, Corners.ROUND, Holes.KEEP, Tolerance.DEFAULT, Monitor.NONE));
	}

	/** Whether it is a picture of pixels that is worked along nothing, for how its edge is found is not said. */
	public boolean isWithoutEdge() {
		return element instanceof Picture picture && picture.getEdge() == null;
	}

	/**
	 * What is done with it, in this order: all its operations that its kind allows; nothing with a part of a combination.
	 */
	public List<Operation> operations() {
		return part ? List.of() : element.getOperations().stream().filter(operation -> allows(operation.getKind())).toList();
	}

	/** Pixels without an edge are only printed; pen lettering is never worked by a blade. */
	private boolean allows(OperationKind kind) {
		if (kind == OperationKind.PRINT) {
			return true;
		}
		return !isWithoutEdge() && (kind == OperationKind.DRAW || !isPenLettering());
	}

	/**
	 * The dashes that an operation is worked in: those of a crease or a perforation that asks for them, over all corners.
	 * Empty if its lines are worked whole, or are left to the machine to break up.
	 */
	public List<Contour> dashes(Operation operation) {
		boolean broken = operation.getKind() == OperationKind.CREASE || operation.getKind() == OperationKind.PERFORATE;
		if (!broken || !(operation.getDash() > 0 && operation.getGap() > 0)) {
			return List.of();
		}
		List<Contour> whole = new ArrayList<>(region.contours());
		whole.addAll(lines);
		return new Dashes(operation.getDash(), operation.getGap()).of(whole);
	}

	/** Whether any of its {@linkplain #operations() operations} is of this kind. */
	public boolean has(OperationKind kind) {
		return operations().stream().anyMatch(operation -> operation.getKind() == kind);
	}

	/** The curves as they were set or drawn, in the job's frame; made anew at each call. */
	public Outline source() {
		return uncleaned.curves().transformed(uncleaned.placement());
	}

	public Bounds bounds() {
		return lines.stream().map(Contour::bounds).reduce(region.bounds(), Bounds::with);
	}
}
