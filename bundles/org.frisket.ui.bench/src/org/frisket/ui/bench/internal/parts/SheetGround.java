package org.frisket.ui.bench.internal.parts;

import java.util.List;

import org.eclipse.swt.graphics.Color;
import org.frisket.geometry.Bounds;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;

/** How large a sheet is shown under a job that has none of its own yet. It grows when it must and never shrinks. */
final class SheetGround {

	/** A5 lying. */
	private static final Bounds BLANK = new Bounds(0, 0, 210, 148);
	private static final double MARGIN = 15;
	private static final double LEAST_MARGIN = 3;
	private static final double STEP = 10;

	private SheetGround() {
	}

	/** The sheet for what lies on it; the one shown before stays while it is large enough. All in mm. */
	static Bounds around(Bounds content, Bounds before) {
		if (content.isEmpty()) {
			return before.isEmpty() ? BLANK : before;
		}
		Bounds needed = content.grown(LEAST_MARGIN);
		if (before.minX() <= needed.minX() && before.minY() <= needed.minY() && before.maxX() >= needed.maxX()
				&& before.maxY() >= needed.maxY()) {
			return before;
		}
		Bounds wanted = content.grown(MARGIN).with(before);
		return new Bounds(down(wanted.minX()), down(wanted.minY()), -down(-wanted.maxX()), -down(-wanted.maxY()));
	}

	/**
	 * The colour of the sheet, where all that is shown lies on one stock and nothing is cut free of it, so that the
	 * sheet itself is the piece; else null, for then the pieces have the colour and the sheet is only what they lie on.
	 */
	static Color colour(Job job) {
		List<Element> shown = Jobs.elements(job).stream().filter(Jobs::isShown).toList();
		List<String> colours = shown.stream().map(element -> Jobs.layerOf(element).getColour()).distinct().toList();
		return colours.size() == 1 && shown.stream().noneMatch(SheetGround::isCutFree) ? StockColour.of(colours.get(0))
				: null;
	}

	private static boolean isCutFree(Element element) {
		return element.getOperations().isEmpty() || element.getOperations().stream().map(Operation::getKind)
				.anyMatch(kind -> kind == OperationKind.CUT || kind == OperationKind.KISS_CUT);
	}

	private static double down(double mm) {
		return Math.floor(mm / STEP) * STEP;
	}
}
