package org.frisket.ui.bench.internal.handlers.jobs;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.frisket.imports.Importers;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.imports.ArtImport;

/** Asks for files of others and lays them into the job in front. */
public final class ImportHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		FileDialog dialog = new FileDialog(bench.getSite().getShell(), SWT.OPEN | SWT.MULTI);
		dialog.setText(Messages.ImportHandler_title);
		dialog.setFilterExtensions(new String[] { endings(), "*" }); //$NON-NLS-1$
		dialog.setFilterNames(new String[] { Messages.ImportHandler_artFiles, Messages.OpenJobHandler_allFiles });
		if (dialog.open() != null) {
			List<Path> files = Arrays.stream(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name))
					.toList();
			ArtImport.into(bench, files, null);
		}
	}

	/** Of all files that can be read, as a file dialog takes them. */
	static String endings() {
		return Importers.all().stream().flatMap(importer -> Importers.endings(importer).stream())
				.map(ending -> "*." + ending).collect(Collectors.joining(";")); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
