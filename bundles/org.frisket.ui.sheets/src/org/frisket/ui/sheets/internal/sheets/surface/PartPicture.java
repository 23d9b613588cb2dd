package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.sheets.SheetPart;
import org.frisket.ui.bench.internal.picture.ElementPicture;
import org.frisket.ui.bench.internal.picture.FlatCurves;

/**
 * How a part is drawn, in mm about the centre of its bounds.
 *
 * @param shape what it takes up
 * @param lines what is done on it
 * @param mark  written on it; empty for nothing
 */
public record PartPicture(ElementPicture shape, List<Line> lines, String mark) {

	/** A tenth of what a person sees at true size. */
	private static final double FLATNESS = 0.01;

	/** @param dashed whether the curves are dashes already, which no pattern is to break further */
	public record Line(OperationKind kind, Outline curves, boolean dashed) {
	}

	public PartPicture {
		lines = List.copyOf(lines);
	}

	/** Takes a moment: not for the UI thread. */
	public static PartPicture of(SheetPart part, String mark) {
		Point centre = part.room().bounds().centre();
		Transform home = Transform.translation(-centre.x(), -centre.y());
		Outline room = part.room().toOutline().transformed(home);
		List<Line> lines = new ArrayList<>();
		part.elements().forEach(element -> lines(element, home, lines));
		return new PartPicture(new ElementPicture(room, new FlatCurves(room, FLATNESS), Outline.EMPTY,
				Transform.IDENTITY, Set.of()), lines, mark);
	}

	private static void lines(PreparedElement element, Transform home, List<Line> lines) {
		Outline curves = element.region().toOutline().plus(new Outline(element.lines())).transformed(home);
		if (element.operations().isEmpty()) {
			lines.add(new Line(OperationKind.CUT, curves, false));
		}
		for (Operation operation : element.operations()) {
			List<Contour> dashes = element.dashes(operation);
			lines.add(dashes.isEmpty() ? new Line(operation.getKind(), curves, false)
					: new Line(operation.getKind(), new Outline(dashes).transformed(home), true));
		}
	}
}
