package org.frisket.ui.bench.internal.imports;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.statushandlers.StatusManager;
import org.frisket.editing.elements.ImportArt;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.imports.Importers;
import org.frisket.imports.job.TakenArt;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Takes files onto a bench. Only for the UI thread. */
public final class ArtImport {

	private ArtImport() {
	}

	/** Whether a file is art of others, by its ending. */
	public static boolean isArt(Path file) {
		return Importers.forFile(file.toString()).isPresent();
	}

	/**
	 * Asks how, and lays them into the job of a bench, as one step of undo.
	 *
	 * @param place where their middle comes to lie, in mm; null leaves them where they are in their files
	 */
	public static void into(BenchEditor bench, List<Path> files, Point place) {
		Shell shell = bench.getSite().getShell();
		new ImportDialog(shell, files, (read, rules) -> new TakeRun(shell, line(bench), read,
				taken -> lay(bench, files, read, taken, place)).start(rules)).open();
	}

	private static IStatusLineManager line(BenchEditor bench) {
		return bench.getEditorSite().getActionBars().getStatusLineManager();
	}

	private static void lay(BenchEditor bench, List<Path> files, List<ReadArt> read, List<TakenArt> taken, Point place) {
		if (bench.viewer() == null || bench.viewer().getControl() == null || bench.viewer().getControl().isDisposed()) {
			return;
		}
		Bounds all = read.stream().map(each -> each.art().bounds()).reduce(Bounds.EMPTY, Bounds::with);
		Transform shift = place == null || all.isEmpty() ? Transform.IDENTITY
				: Transform.translation(place.x() - all.centre().x(), place.y() - all.centre().y());
		List<ImportArt.Sheet> sheets = new ArrayList<>();
		taken.forEach(each -> sheets.add(new ImportArt.Sheet(each.job(), shift.e(), shift.f())));
		lay(bench, new ImportArt(bench.document().job(), sheets, ImportWords.of(files)));
	}

	/** All of it is seen when it has been worked through. */
	private static void lay(BenchEditor bench, ImportArt edit) {
		JobOnBench onBench = Adapters.adapt(bench, JobOnBench.class);
		onBench.edits().execute(edit);
		onBench.select(edit.imported());
		onBench.addListener(new JobOnBench.Listener() {
			@Override
			public void pictureChanged() {
				if (onBench.isUpToDate()) {
					bench.fit();
					onBench.removeListener(this);
				}
			}
		});
	}

	/** Makes a new job of a file, on a bench of its own, as it was set last; asks only what the file does not tell. */
	public static void open(IWorkbenchPage page, Path file) {
		Shell shell = page.getWorkbenchWindow().getShell();
		new ReadJob(List.of(file), ImportMemory::ofImporter, shell.getDisplay(), read -> {
			if (shell.isDisposed()) {
				return;
			}
			ReadArt art = read.get(0);
			if (!art.isRead()) {
				TakeRun.failed(shell, art.trouble());
			} else if (art.asked() != null) {
				new ImportDialog(shell, List.of(file), (answered, rules) -> open(page, answered.get(0), rules)).open();
			} else {
				open(page, art, ImportMemory.ofRules());
			}
		}).schedule();
	}

	private static void open(IWorkbenchPage page, ReadArt art, Map<String, String> rules) {
		try {
			BenchEditor bench = (BenchEditor) page.openEditor(UntitledInput.next(page), Bench.EDITOR_ID);
			new TakeRun(bench.getSite().getShell(), line(bench), List.of(art), taken -> lay(bench, ImportArt
					.intoNew(bench.document().job(), taken.get(0).job(), ImportWords.of(List.of(art.file()))))).start(rules);
		} catch (PartInitException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}
}
