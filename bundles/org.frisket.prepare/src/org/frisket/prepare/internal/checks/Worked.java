package org.frisket.prepare.internal.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Contour;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.Severity;

/** What a tool goes along. */
final class Worked {

	private Worked() {
	}

	/** Whether a blade parts it from what is round it: through the stock, or through the upper one of two. */
	static boolean isCut(PreparedElement element) {
		return element.has(OperationKind.CUT) || element.has(OperationKind.KISS_CUT);
	}

	static Stream<PreparedElement> cut(PreparedJob job) {
		return job.elements().filter(Worked::isCut);
	}

	/** Those of a layer that are handed out. */
	static List<PreparedElement> cut(PreparedLayer layer) {
		return layer.shown().stream().filter(Worked::isCut).toList();
	}

	/**
	 * How much it matters that something is narrow which is cut out of an element: waste that tears is a pity in what is
	 * seen, while in a mat it lies behind something.
	 */
	static Severity ofWaste(PreparedElement element) {
		return element.element() instanceof Mat ? Severity.NOTE : Severity.CAUTION;
	}

	/** All that a tool follows of an element: contours and lines. */
	static List<Contour> lines(PreparedElement element) {
		List<Contour> lines = new ArrayList<>(element.region().contours());
		lines.addAll(element.lines());
		return lines;
	}
}
