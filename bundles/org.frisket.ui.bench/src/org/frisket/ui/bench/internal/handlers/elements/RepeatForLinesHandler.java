package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.arranging.Box;
import org.frisket.editing.wording.RepeatForLines;
import org.frisket.geometry.Bounds;
import org.frisket.model.Element;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.lines.LinesDialog;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;

/** Asks for a list and makes one of the selected elements for each of its lines, which the wording among them says. */
public final class RepeatForLinesHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(true);
		List<Element> elements = Selection.elements(bench.viewer());
		List<Wording> wordings = elements.stream().filter(Wording.class::isInstance).map(Wording.class::cast).toList();
		if (wordings.size() != 1) {
			bench.say(Messages.RepeatForLinesHandler_oneWording);
			return;
		}
		bench.say(null);
		Wording wording = wordings.get(0);
		String first = wording.getText() == null ? "" : wording.getText().replace('\n', '\t'); //$NON-NLS-1$
		new LinesDialog(bench.getSite().getShell(), first, lines -> make(bench, elements, wording, lines)).open();
	}

	private static void make(BenchEditor bench, List<Element> elements, Wording wording, List<String> lines) {
		Optional<Box> text = box(bench, List.of(wording));
		Optional<Box> whole = box(bench, RepeatForLines.withFollowers(elements));
		if (text.isEmpty() || whole.isEmpty()) {
			bench.say(Messages.RepeatForLinesHandler_notYet);
			return;
		}
		RepeatForLines edit = new RepeatForLines(elements, wording, lines, whole.get(), text.get());
		bench.commandStack().execute(new EditCommand(edit));
	}

	/** How far elements reach as they are shown; empty if none shows anything. */
	private static Optional<Box> box(BenchEditor bench, List<? extends Element> elements) {
		return Selection.all(bench.viewer()).stream().filter(part -> elements.contains(part.element()))
				.map(ElementPart::boundsInMm).filter(bounds -> !bounds.isEmpty()).reduce(Bounds::with)
				.map(all -> new Box(all.minX(), all.minY(), all.maxX(), all.maxY()));
	}
}
