package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.JobFragment;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays the selected elements on the clipboard, or the letters that are selected in what is typed. */
public final class CopyHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		copy(bench);
	}

	/** @return whether elements lie on the clipboard now */
	static boolean copy(BenchEditor bench) {
		List<Element> selected = Selection.elements(bench.viewer());
		if (bench.typing().isActive()) {
			ElementClipboard.put(bench.typing().copied());
			return false;
		}
		return !selected.isEmpty() && ElementClipboard.put(JobFragment.write(selected));
	}
}
