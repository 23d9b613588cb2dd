package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.geometry.Length;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Mat;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;

/** Puts one more mat behind the selected elements, a step further out than those they have. */
public final class AddMatHandler extends ElementHandler {

	/** From what is in front of it to the edge of a new mat, in mm. */
	private static final double STEP = 3;
	private static final int DECIMALS = 2;

	/** A mat goes behind what leads: a selected mat that follows the others is no reason for one of its own. */
	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		List<Element> leaders = Selection.movableParts(bench.viewer()).stream().map(ElementPart::element).toList();
		double widest = leaders.stream().flatMap(element -> Jobs.matsOf(element).stream())
				.mapToDouble(Mat::getDistance).max().orElse(0);
		return new AddMatBehind(leaders, List.of(Math.max(widest, 0) + STEP),
				mm -> NLS.bind(Messages.AddMatHandler_layer, Length.text(mm, DECIMALS)));
	}
}
