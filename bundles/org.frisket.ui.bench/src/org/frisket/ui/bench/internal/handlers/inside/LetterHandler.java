package org.frisket.ui.bench.internal.handlers.inside;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.letters.LetterAct;

/** Does something to the chosen letters, or chooses another. */
public final class LetterHandler extends BenchHandler {

	private static final String ACT = "org.frisket.ui.bench.command.letter.act"; //$NON-NLS-1$

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) throws ExecutionException {
		if (bench.letters().isActive()) {
			bench.letters().act(ElementHandler.choice(event, ACT, LetterAct.class));
		}
	}
}
