package org.frisket.ui.bench.internal.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.frisket.geometry.Tolerance;
import org.frisket.imports.job.ArtRules;
import org.frisket.imports.job.ArtTaker;
import org.frisket.imports.job.TakenArt;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.ui.bench.internal.editor.StatusProgress;

/** Makes jobs of what was read, off the UI thread, with progress and cancel in the status line. */
final class TakeRun {

	private final Shell shell;
	private final IStatusLineManager line;
	private final StatusProgress progress;
	private final List<ReadArt> read;
	private final String source;
	private final Consumer<List<TakenArt>> done;

	/** @param done told on the UI thread, if there is anything to take */
	TakeRun(Shell shell, IStatusLineManager line, List<ReadArt> read, Consumer<List<TakenArt>> done) {
		this.shell = shell;
		this.line = line;
		progress = new StatusProgress(shell, line);
		this.read = read;
		this.done = done;
		source = ImportWords.of(read.stream().map(ReadArt::file).toList());
	}

	/** @param rules texts of options, as {@link ArtRules#of} takes them */
	void start(Map<String, String> rules) {
		String name = NLS.bind(Messages.TakeRun_name, source);
		progress.begin(name);
		Job job = Job.create(name, (ICoreRunnable) monitor -> run(rules));
		job.setSystem(true);
		job.schedule();
	}

	private void run(Map<String, String> rules) {
		try {
			ArtTaker taker = new ArtTaker(ArtRules.of(rules), Tolerance.DEFAULT);
			List<TakenArt> taken = new ArrayList<>();
			for (ReadArt each : read) {
				taken.add(taker.take(ImportWords.title(each.file()), each.art(), progress.part(taken.size(), read.size())));
			}
			progress.ended(() -> tell(taken));
		} catch (CancellationException e) {
			progress.ended(() -> line.setMessage(NLS.bind(Messages.TakeRun_cancelled, source)));
		} catch (ContributionException | RuntimeException | LinkageError e) {
			ILog.of(TakeRun.class).error(e.toString(), e);
			progress.ended(() -> failed(shell, NLS.bind(Messages.TakeRun_failed, source, e.getMessage())));
		}
	}

	private void tell(List<TakenArt> taken) {
		List<TakenArt> full = taken.stream().filter(art -> !art.isEmpty()).toList();
		if (full.isEmpty()) {
			failed(shell, NLS.bind(Messages.TakeRun_empty, source));
			return;
		}
		done.accept(full);
		line.setMessage(NLS.bind(Messages.TakeRun_taken, new Object[] { source,
				full.stream().mapToInt(art -> art.job().getLayers().size()).sum(),
				full.stream().mapToInt(TakenArt::repairs).sum() }));
	}

	static void failed(Shell shell, String message) {
		MessageDialog.openError(shell, Messages.TakeRun_failedTitle, message);
	}
}
