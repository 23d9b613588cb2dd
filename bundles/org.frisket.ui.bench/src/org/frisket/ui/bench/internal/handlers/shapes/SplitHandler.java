package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.CombineElements;
import org.frisket.model.Element;
import org.frisket.model.Outline;
import org.frisket.prepare.PreparedJob;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Makes two shapes of the selected elements: what lies on either side of the selected open line. */
public final class SplitHandler extends ElementHandler {

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		PreparedJob prepared = bench.document().picture().prepared();
		List<Element> split = new ArrayList<>(CombineHandler.lowestFirst(bench, elements));
		Optional<Element> line = split.stream().filter(element -> isLine(prepared, element)).findFirst();
		bench.say(line.isEmpty() ? Messages.SplitHandler_noLine : split.size() < 2 ? Messages.SplitHandler_nothing : null);
		if (line.isEmpty()) {
			return CombineElements.split(List.of());
		}
		split.remove(line.get());
		split.add(line.get());
		return CombineElements.split(split);
	}

	private static boolean isLine(PreparedJob prepared, Element element) {
		return element instanceof Outline && prepared != null && prepared.element(element.getId())
				.filter(found -> found.region().isEmpty() && !found.lines().isEmpty()).isPresent();
	}

	@Override
	protected void done(BenchEditor bench, Edit edit) {
		CombineHandler.select(bench, edit);
	}
}
