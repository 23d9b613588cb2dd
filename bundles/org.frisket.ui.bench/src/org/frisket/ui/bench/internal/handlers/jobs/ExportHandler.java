package org.frisket.ui.bench.internal.handlers.jobs;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.JobFile;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.ExportStart;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.JobNames;
import org.frisket.ui.bench.internal.export.ExportDialog;
import org.frisket.ui.bench.internal.export.ExportRun;
import org.frisket.ui.bench.internal.handlers.BenchHandler;

/** Asks how to export the job in front, and does it. */
public final class ExportHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		ask(bench, ExportStart.USUAL);
	}

	/** @param start what is chosen already */
	public static void ask(BenchEditor bench, ExportStart start) {
		BenchDocument document = bench.document();
		Shell shell = bench.getSite().getShell();
		IStatusLineManager line = bench.getEditorSite().getActionBars().getStatusLineManager();
		ExportDialog dialog = new ExportDialog(shell, document.job(), suggested(bench), start, () -> known(bench),
				request -> new ExportRun(shell, line, document.snapshot(),
						Adapters.adapt(bench.getEditorInput(), Path.class), request).start());
		dialog.open();
		// findings may come in while the form is open
		Runnable update = dialog::validate;
		document.addPictureListener(update);
		dialog.getShell().addDisposeListener(e -> document.removePictureListener(update));
	}

	/** None while they are still looked for: the export looks again before it writes. */
	private static List<Finding> known(BenchEditor bench) {
		return bench.isUpToDate() ? bench.document().picture().findings() : List.of();
	}

	private static Path suggested(BenchEditor bench) {
		return bench.document().path().map(ExportHandler::withoutEnding).orElseGet(() -> JobNames.folder()
				.resolve(JobNames.fileName(bench.document().job(), bench.getPartName())));
	}

	private static Path withoutEnding(Path job) {
		String name = job.getFileName().toString();
		return name.endsWith(JobFile.ENDING)
				? job.resolveSibling(name.substring(0, name.length() - JobFile.ENDING.length()))
				: job;
	}
}
