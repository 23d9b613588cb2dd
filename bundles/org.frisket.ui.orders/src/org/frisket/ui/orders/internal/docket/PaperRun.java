package org.frisket.ui.orders.internal.docket;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.model.WholeFile;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.PaperKind;
import org.frisket.orders.paper.BookPapers;
import org.frisket.orders.paper.Docket;
import org.frisket.orders.paper.JobWork;
import org.frisket.orders.paper.PaperForm;
import org.frisket.orders.paper.Proof;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.Pictures;
import org.frisket.ui.studio.StoreWatch;

/** Writes a paper of a job: the whole file or none, and only then the order book knows of it. */
final class PaperRun extends Job {

	private static final String ENDING = ".pdf"; //$NON-NLS-1$
	/** Of the studio's folder: where papers lie if nobody says otherwise. */
	private static final String FOLDER = "papers"; //$NON-NLS-1$
	/** Where the last one was put. */
	private static Path lastFolder;

	/** Makes what is written; called off the UI thread. */
	interface Maker {
		BookPapers.Writing of(JobWork work, PaperForm form) throws IOException;
	}

	private final DocketView view;
	private final Display display;
	private final Entry entry;
	private final PaperKind kind;
	private final Path file;
	private final Maker maker;

	private PaperRun(DocketView view, Entry entry, PaperKind kind, Path file, Maker maker) {
		super(NLS.bind(Messages.PaperRun_name, PaperWords.of(kind), entry.number()));
		this.view = view;
		display = view.page().getDisplay();
		this.entry = entry;
		this.kind = kind;
		this.file = file;
		this.maker = maker;
	}

	/** Asks where to, and writes a docket or a proof there. */
	static void ask(DocketView view, Entry entry, PaperKind kind) {
		place(view.getSite().getShell(), entry, kind).ifPresent(file -> write(view, entry, kind, file));
	}

	/** Writes a docket or a proof. */
	static void write(DocketView view, Entry entry, PaperKind kind, Path file) {
		write(view, entry, kind, file, (work, form) -> kind == PaperKind.PROOF ? out -> Proof.write(work, form, out)
				: out -> Docket.write(work, form, out));
	}

	static void write(DocketView view, Entry entry, PaperKind kind, Path file, Maker maker) {
		view.say(NLS.bind(Messages.PaperRun_writing, PaperWords.of(kind)), null);
		new PaperRun(view, entry, kind, file, maker).schedule();
	}

	/** Where somebody wants a paper; empty if nowhere. */
	static Optional<Path> place(Shell shell, Entry entry, PaperKind kind) {
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setText(NLS.bind(Messages.PaperRun_title, PaperWords.of(kind)));
		dialog.setFilterExtensions(new String[] { "*" + ENDING }); //$NON-NLS-1$
		dialog.setFilterPath(folder().toString());
		dialog.setFileName(PaperWords.file(kind) + '-' + entry.number() + ENDING);
		dialog.setOverwrite(true);
		Optional<Path> chosen = Optional.ofNullable(dialog.open()).map(PaperRun::ended);
		chosen.ifPresent(path -> lastFolder = path.getParent());
		return chosen;
	}

	private static Path ended(String path) {
		return Path.of(path.toLowerCase(Locale.ROOT).endsWith(ENDING) ? path : path + ENDING);
	}

	/** The studio's own one is made when it is asked for first. */
	private static Path folder() {
		if (lastFolder != null && Files.isDirectory(lastFolder)) {
			return lastFolder;
		}
		Path papers = Studio.folder().path().resolve(FOLDER);
		try {
			return Files.createDirectories(papers);
		} catch (IOException e) {
			ILog.of(PaperRun.class).warn(WholeFile.reason(e), e);
			return Path.of(System.getProperty("user.home")); //$NON-NLS-1$
		}
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			Means means = Means.now();
			JobWork work = means.papers().work(new OrderBook(Studio.folder()).open(entry.number()).job(), means.work(),
					Pictures.monitor(monitor));
			BookPapers.write(maker.of(work, Means.form()), file);
			try {
				means.papers().note(entry.number(), kind, file, OrderDesk.person());
				tell(NLS.bind(Messages.PaperRun_written, PaperWords.of(kind), file), file);
			} catch (IOException | OrderException e) {
				tell(NLS.bind(Messages.PaperRun_notNoted, new Object[] { PaperWords.of(kind), file, e.getMessage() }),
						file);
			}
			StoreWatch.get().changed();
		} catch (CancellationException e) {
			tell(NLS.bind(Messages.PaperRun_cancelled, PaperWords.of(kind)), null);
		} catch (IOException e) {
			tell(NLS.bind(Messages.PaperRun_failed, file, WholeFile.reason(e)), null);
		} catch (OrderException | IllegalArgumentException e) {
			tell(NLS.bind(Messages.PaperRun_failed, file, e.getMessage()), null);
		} catch (RuntimeException | LinkageError e) {
			ILog.of(PaperRun.class).error(e.toString(), e);
			tell(NLS.bind(Messages.PaperRun_failed, file, e), null);
		}
		return Status.OK_STATUS;
	}

	private void tell(String text, Path written) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				view.say(text, written);
				if (written != null) {
					view.refresh();
				}
			});
		}
	}
}
