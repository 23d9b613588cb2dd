package org.frisket.ui.bench.internal.handlers.elements;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.rulers.Guides;

/** Asks for the exact place of a new guide. */
public final class AddGuideHandler extends BenchHandler {

	private static final String ACROSS = "org.frisket.ui.bench.command.addGuide.across"; //$NON-NLS-1$

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		Guides.of(bench.viewer()).addTyped(Boolean.parseBoolean(event.getParameter(ACROSS)));
	}
}
