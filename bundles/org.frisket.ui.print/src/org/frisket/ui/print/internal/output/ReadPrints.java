package org.frisket.ui.print.internal.output;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Sheet;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.print.output.BareSheet;
import org.frisket.print.output.FilePages;
import org.frisket.print.output.JobPrints;
import org.frisket.print.output.PrintAndCut;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.WorkLine;
import org.frisket.print.register.RegisterException;
import org.frisket.sheets.imposing.Supply;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.internal.picture.Pixels;

/** Works out off the UI thread how sheets are printed and cut. A newer request calls off the one under way. */
final class ReadPrints extends Job {

	/**
	 * What is asked for.
	 *
	 * @param numbers of the sheets that are wanted
	 * @param bare    size of the one of a job without sheets; empty for that of its stock
	 * @param shown   the one that is seen
	 * @param back    whether its back is
	 */
	record Request(PrintOptions options, List<Integer> numbers, Optional<SheetsChosen.Size> bare, int shown, boolean back) {
	}

	/** Told on the UI thread, of the newest request only. */
	interface Client {

		/** Comes first, so that there is something to see. */
		void face(Face face);

		/** In the order of their numbers. @param problems why guests of the job cannot be had */
		void sheets(Request request, List<PrintAndCut> sheets, List<String> problems);

		void failed(String message);
	}

	/** Of the longer side; as many pixels as a large screen has. */
	private static final int LONGEST_PX = 1600;

	private final Display display;
	private final org.frisket.model.Job snapshot;
	private final Path file;
	private final Client client;
	private final AtomicReference<Request> latest = new AtomicReference<>();
	private JobPrints prints;
	/** What was asked of the sheet that a job without sheets is put on; null while it is on none. */
	private Optional<SheetsChosen.Size> putOn;

	/** @param snapshot a copy that nobody changes any more @param file where the job is; null if it is in none */
	ReadPrints(Display display, org.frisket.model.Job snapshot, Path file, Client client) {
		super(Messages.ReadPrints_name);
		this.display = display;
		this.snapshot = snapshot;
		this.file = file;
		this.client = client;
		setSystem(true);
		setPriority(SHORT);
	}

	/** @param request null calls off what is under way */
	void request(Request request) {
		latest.set(request);
		cancel();
		if (request != null) {
			schedule();
		}
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		Request request = latest.get();
		if (request == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			read(request, progress::isCanceled);
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (IOException e) {
			tell(request, () -> client.failed(e.getMessage()));
		} catch (RuntimeException | LinkageError e) {
			ILog.of(ReadPrints.class).error(e.toString(), e);
			tell(request, () -> client.failed(NLS.bind(Messages.ReadPrints_failed, e)));
		}
		return Status.OK_STATUS;
	}

	private void read(Request request, Monitor monitor) throws IOException {
		if (prints == null) {
			prints = JobPrints.of(snapshot, file, new JobPreparer(FontLibraries.installed()), Tolerance.DEFAULT, monitor);
		}
		if (snapshot.getSheets().isEmpty() && !request.bare().equals(putOn)) {
			prints.putOn(bareSheet(request.bare()));
			putOn = request.bare();
		}
		if (request.shown() > 0) {
			Face face = face(request, prints.sheet(request.shown(), request.options(), monitor), monitor);
			tell(request, () -> client.face(face));
		}
		List<PrintAndCut> sheets = new ArrayList<>();
		for (int number : request.numbers()) {
			sheets.add(prints.sheet(number, request.options(), monitor));
		}
		tell(request, () -> client.sheets(request, sheets, prints.problems()));
	}

	private Sheet bareSheet(Optional<SheetsChosen.Size> size) throws IOException {
		return size.isPresent() ? BareSheet.of(snapshot, size.get().width(), size.get().height())
				: BareSheet.of(snapshot, Supply.ofStudio(Studio.folder()))
						.orElseThrow(() -> new IOException(Messages.ReadPrints_noSize));
	}

	private static Face face(Request request, PrintAndCut sheet, Monitor monitor) throws IOException {
		// cuts that follow measured marks lie on the print where they were designed to
		PrintAndCut designed = new PrintAndCut(sheet.print().asSeen(), Optional.empty(), Optional.empty(), List.of());
		Bounds page = sheet.print().faces().page();
		double scale = LONGEST_PX / Math.max(page.width(), page.height());
		try {
			List<WorkLine> back = work(designed, true, monitor);
			boolean twoSided = sheet.isTwoSided();
			boolean turned = request.back() && twoSided;
			ImageData pixels = null;
			if (turned ? !sheet.print().back().isEmpty() : sheet.print().isPrinted()) {
				try (FilePages pages = FilePages.of(designed.print(), monitor)) {
					pixels = Pixels.data(pages.image(turned ? 1 : 0, page, Math.max(1, (int) Math.round(page.width() * scale)),
							Math.max(1, (int) Math.round(page.height() * scale)), true));
				}
			}
			return new Face(request.shown(), turned, twoSided, page.width(), page.height(), pixels,
					turned ? back : work(designed, false, monitor), (turned ? sheet.backFit() : sheet.fit()).isPresent());
		} catch (RegisterException never) {
			throw new IllegalStateException(never);
		}
	}

	private static List<WorkLine> work(PrintAndCut sheet, boolean back, Monitor monitor) throws RegisterException {
		return sheet.cut(back, false, Tolerance.DEFAULT, monitor).map(WorkLine::of).orElse(List.of());
	}

	private void tell(Request request, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (latest.get() == request) {
					news.run();
				}
			});
		}
	}
}
