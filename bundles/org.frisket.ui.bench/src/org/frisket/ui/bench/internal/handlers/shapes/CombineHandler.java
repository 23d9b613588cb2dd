package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.CombineElements;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Makes one shape of the selected elements; the lowest of them is the one that the others are taken from. */
public final class CombineHandler extends ElementHandler {

	private static final String RULE = "org.frisket.ui.bench.command.combine.rule"; //$NON-NLS-1$

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		bench.say(elements.size() < 2 ? Messages.CombineHandler_tooFew : null);
		return CombineElements.by(choice(event, RULE, CombinationRule.class), lowestFirst(bench, elements));
	}

	/** Which was selected first is hard to see on the bench; which lies lowest is not. */
	static List<Element> lowestFirst(BenchEditor bench, List<Element> elements) {
		return Jobs.elements(bench.document().job()).stream().filter(elements::contains).toList();
	}

	@Override
	protected void done(BenchEditor bench, Edit edit) {
		select(bench, edit);
	}

	static void select(BenchEditor bench, Edit edit) {
		List<? extends Element> made = ((CombineElements) edit).combinations();
		if (!made.isEmpty()) {
			Selection.select(bench.viewer(), made);
		}
	}
}
