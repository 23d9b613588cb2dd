package org.frisket.ui.bench.internal.handlers.shapes;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.Element;
import org.frisket.model.Picture;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.imports.PageDialog;
import org.frisket.ui.bench.internal.imports.PictureReplacement;
import org.frisket.ui.bench.internal.parts.Selection;

/** Asks for the file of another picture, which takes the place of the selected one. */
public final class ReplacePictureHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(true);
		List<Element> elements = Selection.elements(bench.viewer());
		if (elements.size() != 1 || !(elements.get(0) instanceof Picture picture)) {
			bench.say(Messages.ReplacePictureHandler_one);
			return;
		}
		FileDialog dialog = new FileDialog(bench.getSite().getShell(), SWT.OPEN);
		dialog.setText(Messages.ReplacePictureHandler_title);
		String file = dialog.open();
		if (file != null) {
			JobOnBench onBench = Adapters.adapt(bench, JobOnBench.class);
			Shell shell = bench.getSite().getShell();
			new PictureReplacement(shell.getDisplay(), picture, Path.of(file),
					(pages, chosen) -> new PageDialog(shell, Path.of(file), pages, chosen).open(),
					edit -> onBench.edits().execute(edit), bench::say).schedule();
		}
	}
}
