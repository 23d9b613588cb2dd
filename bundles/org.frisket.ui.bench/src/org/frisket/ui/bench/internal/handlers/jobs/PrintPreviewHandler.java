package org.frisket.ui.bench.internal.handlers.jobs;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.print.PrintPreview;
import org.frisket.ui.bench.internal.print.PrintedJob;

/** Shows the job in front as it comes onto paper. */
public final class PrintPreviewHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(true);
		BenchDocument document = bench.document();
		PrintPreview preview = new PrintPreview(bench.getSite().getShell(),
				() -> PrintedJob.of(bench.viewer(), document.job(), bench.getPartName()), bench.looks().look());
		preview.open();
		// what was edited last may still be worked through
		Runnable update = preview::refresh;
		document.addPictureListener(update);
		preview.getShell().addDisposeListener(e -> document.removePictureListener(update));
	}
}
