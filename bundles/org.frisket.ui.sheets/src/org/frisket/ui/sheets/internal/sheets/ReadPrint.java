package org.frisket.ui.sheets.internal.sheets;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.print.output.FilePages;
import org.frisket.print.output.PrintOptions;
import org.frisket.print.output.PrintSheet;
import org.frisket.print.output.SheetFaces;
import org.frisket.print.output.SheetGuides;
import org.frisket.ui.bench.internal.picture.Pixels;

/** Reads off the UI thread what is printed on a sheet. A newer request calls off the one under way. */
final class ReadPrint extends Job {

	/** In one image: 24 MB. */
	private static final double MOST_PIXELS = 6e6;

	/**
	 * What is asked for.
	 *
	 * @param jobs  prepared, by id @param index of the sheet, from 0 @param scale pixels in a mm
	 * @param art   whether art is shown @param marks whether marks, code and ruler are @param guides whether lines to
	 * look at are
	 * @param host  a copy, which nobody else changes; null in a request that is only compared
	 */
	record Request(Map<String, PreparedJob> jobs, int index, double scale, boolean art, boolean marks, boolean guides,
			org.frisket.model.Job host) {

		Request on(org.frisket.model.Job copy) {
			return new Request(jobs, index, scale, art, marks, guides, copy);
		}

		/** Whether what another one asks for will do. */
		boolean isServedBy(Request other) {
			return jobs == other.jobs && index == other.index && scale <= other.scale && art == other.art && marks == other.marks
					&& guides == other.guides;
		}
	}

	/** What is seen on a sheet. @param printed whether anything is printed on it */
	record Result(ImageData pixels, boolean printed, SheetGuides guides) {
	}

	private final Display display;
	private final Consumer<Result> client;
	private final AtomicReference<Request> latest = new AtomicReference<>();
	/** What was read last, for the next request about the same. */
	private Map<String, PreparedJob> jobs;
	private List<SheetFaces> faces;
	private PrintSheet sheet;
	private FilePages pages;

	/** @param client told on the UI thread, of the newest request only; null if nothing is seen on the sheet */
	ReadPrint(Display display, Consumer<Result> client) {
		super(Messages.ReadPrint_name);
		this.display = display;
		this.client = client;
		setSystem(true);
		setPriority(DECORATE);
	}

	/** So fine that little is made anew while somebody zooms, and never more than memory is for. */
	static double step(Sheet sheet, double scale) {
		double finest = Math.sqrt(MOST_PIXELS / (sheet.getWidth() * sheet.getHeight()));
		return Math.min(finest, Math.pow(2, Math.ceil(Math.log(Math.max(scale, 0.5)) / Math.log(2))));
	}

	/** @param request null calls off what is under way, and lets go what was read */
	void request(Request request) {
		latest.set(request);
		cancel();
		schedule();
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		Request request = latest.get();
		if (request == null) {
			forget();
			return Status.OK_STATUS;
		}
		try {
			Result result = read(request, progress::isCanceled);
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (latest.get() == request) {
						client.accept(result);
					}
				});
			}
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (IOException e) {
			// a picture that cannot be read is told by makeready
			return Status.OK_STATUS;
		} catch (RuntimeException | LinkageError e) {
			ILog.of(ReadPrint.class).error(Messages.ReadJob_failed, e);
			return Status.OK_STATUS;
		}
	}

	private void forget() {
		faces = null;
		sheet = null;
		if (pages != null) {
			try {
				pages.close();
			} catch (IOException e) {
				// only memory was open
			}
			pages = null;
		}
	}

	private Result read(Request request, Monitor monitor) throws IOException {
		if (request.jobs() != jobs) {
			forget();
			jobs = request.jobs();
		}
		boolean printed = jobs.values().stream().flatMap(PreparedJob::elements).anyMatch(each -> each.has(OperationKind.PRINT));
		if (!printed && !request.guides()) {
			return null;
		}
		if (faces == null) {
			faces = SheetFaces.of(request.host(), request.jobs(), false, Tolerance.DEFAULT, monitor);
		}
		SheetFaces wanted = faces.get(request.index());
		if (sheet == null || sheet.faces() != wanted) {
			PrintSheet made = PrintSheet.of(wanted, PrintOptions.USUAL, Tolerance.DEFAULT, monitor);
			FilePages opened = FilePages.of(made, monitor);
			if (pages != null) {
				pages.close();
			}
			sheet = made;
			pages = opened;
		}
		if (!sheet.isPrinted() && !request.guides()) {
			return null;
		}
		Bounds page = wanted.page();
		pages.showArt(request.art());
		pages.showMarks(request.marks());
		BufferedImage image = pages.image(0, page, (int) Math.max(1, Math.round(page.width() * request.scale())),
				(int) Math.max(1, Math.round(page.height() * request.scale())), true);
		return new Result(Pixels.data(image), sheet.isPrinted(), request.guides()
				? SheetGuides.of(wanted, SheetGuides.USUAL_SAFE, Tolerance.DEFAULT, monitor) : new SheetGuides(List.of(), List.of()));
	}
}
