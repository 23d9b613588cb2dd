package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Event;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Shows the curves as they were before cleaning, and again as they are: for good, or while its key is held. */
public final class BeforeCleaningHandler extends BenchHandler {

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) {
		bench.looks().toggleBefore(event.getTrigger() instanceof Event trigger ? trigger : null);
	}
}
