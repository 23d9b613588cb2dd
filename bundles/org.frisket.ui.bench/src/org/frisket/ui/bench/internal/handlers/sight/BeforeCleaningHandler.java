package org.frisket.ui.bench.internal.handlers.sight;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Event;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Shows the curves as they were before cleaning, and again as they are: for good, or while its key is held. */
public final class BeforeCleaningHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.looks().toggleBefore(event.getTrigger() instanceof Event trigger ? trigger : null);
	}
}
