package org.frisket.ui.bench.internal.handlers.elements;

import java.util.Optional;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.JobFragment;
import org.frisket.editing.elements.PasteElements;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays what is on the clipboard on the bench: elements as they are, any other text as a wording. */
public final class PasteHandler extends BenchHandler {

	/** In mm, so that a copy in the same job is seen beside its original. */
	private static final double SHIFT = 5;

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		String text = ElementClipboard.text();
		if (text == null || text.isEmpty()) {
			return;
		}
		if (bench.typing().isActive()) {
			bench.typing().insert(text);
			return;
		}
		Optional<Job> fragment = JobFragment.read(text);
		if (fragment.isPresent()) {
			paste(bench, fragment.get());
		} else {
			bench.typing().begin();
			bench.typing().insert(text);
			bench.typing().end(true);
		}
	}

	private static void paste(BenchEditor bench, Job fragment) {
		Job job = bench.document().job();
		boolean fromHere = Jobs.elements(fragment).stream().anyMatch(element -> liesThere(job, element));
		double shift = fromHere ? SHIFT : 0;
		PasteElements edit = new PasteElements(job, fragment, shift, shift);
		bench.commandStack().execute(new EditCommand(edit));
		Selection.select(bench.viewer(), edit.pasted());
	}

	private static boolean liesThere(Job job, Element element) {
		return Jobs.element(job, element.getId())
				.filter(other -> other.eClass() == element.eClass() && other.getTransform().equals(element.getTransform()))
				.isPresent();
	}
}
