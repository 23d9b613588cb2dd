package org.frisket.ui.print.internal.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.frisket.geometry.Region;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.print.output.FilePages;
import org.frisket.print.output.PrintAndCut;
import org.frisket.print.output.PrintSheet;
import org.frisket.print.output.direct.PageMarks;
import org.frisket.print.output.direct.PaperChecks;
import org.frisket.print.output.direct.PaperPlace;
import org.frisket.print.output.direct.Strip;
import org.frisket.ui.bench.internal.canvas.CurvePath;
import org.frisket.ui.bench.internal.editor.StatusProgress;

/**
 * Prints a sheet straight onto paper, in its true size. Strips of it are made off the UI thread, one at a time, and
 * painted on that thread, which alone may touch the printer; nobody waits for the other.
 */
public final class PaperRun {

	/** @param title by which the window system lists what is printed */
	public record Request(PrinterData data, PrintAndCut sheet, String title) {
	}

	private final Shell shell;
	private final Display display;
	private final IStatusLineManager line;
	private final Request request;
	private final StatusProgress bar;
	private Printer printer;
	private PaperPlace place;
	private FilePages pages;
	private final List<Integer> wanted = new ArrayList<>();
	private int page;
	private List<Strip> strips = List.of();
	private int strip;
	private GC gc;

	public PaperRun(Shell shell, IStatusLineManager line, Request request) {
		this.shell = shell;
		display = shell.getDisplay();
		this.line = line;
		this.request = request;
		bar = new StatusProgress(shell, line);
	}

	/** Asks the user for a printer; null for none. */
	static PrinterData ask(Shell shell, PrintAndCut sheet) {
		PrintSheet print = sheet.print();
		Sheet paper = print.faces().sheet();
		boolean lying = paper.getWidth() > paper.getHeight();
		PrinterData data = new PrinterData();
		data.orientation = lying ? PrinterData.LANDSCAPE : PrinterData.PORTRAIT;
		data.scope = PrinterData.ALL_PAGES;
		data.startPage = 1;
		data.endPage = print.back().isEmpty() ? 1 : 2;
		if (!print.back().isEmpty()) {
			data.duplex = print.options().turn().isLongEdge(paper.getWidth(), paper.getHeight()) ? PrinterData.DUPLEX_LONG_EDGE
					: PrinterData.DUPLEX_SHORT_EDGE;
		}
		PrintDialog dialog = new PrintDialog(shell);
		dialog.setPrinterData(data);
		return dialog.open();
	}

	/** What stands in the way of a sheet on the paper of this printer. @throws SWTError if there is no such printer */
	public static List<Finding> findings(PrinterData data, PrintSheet print) {
		Printer printer = new Printer(data);
		try {
			PaperPlace place = place(printer);
			List<Finding> findings = new ArrayList<>(PaperChecks.of(print, false, place));
			if (!print.back().isEmpty()) {
				PaperChecks.of(print, true, place).stream().filter(each -> findings.stream()
						.noneMatch(known -> known.id().equals(each.id()))).forEach(findings::add);
			}
			return findings;
		} finally {
			printer.dispose();
		}
	}

	/** Whether nothing stands in the way, or the user wants it all the same. */
	static boolean mayPrint(Shell shell, Request request) {
		List<Finding> findings;
		try {
			findings = findings(request.data(), request.sheet().print());
		} catch (SWTError | IllegalArgumentException e) {
			MessageDialog.openError(shell, Messages.PaperRun_title, NLS.bind(Messages.PaperRun_noPrinter, e.getMessage()));
			return false;
		}
		if (findings.isEmpty()) {
			return true;
		}
		String told = findings.stream().map(FindingWords::sentence).collect(Collectors.joining("\n\n")); //$NON-NLS-1$
		return MessageDialog.open(MessageDialog.WARNING, shell, Messages.PaperRun_title, told, SWT.NONE, Messages.PaperRun_stop,
				Messages.PaperRun_anyway) == 1;
	}

	private static PaperPlace place(Printer printer) {
		org.eclipse.swt.graphics.Rectangle area = printer.getClientArea();
		org.eclipse.swt.graphics.Rectangle paper = printer.computeTrim(0, 0, area.width, area.height);
		return new PaperPlace(printer.getDPI().x, printer.getDPI().y, bounds(paper),
				bounds(new org.eclipse.swt.graphics.Rectangle(0, 0, area.width, area.height)));
	}

	private static org.frisket.geometry.Bounds bounds(org.eclipse.swt.graphics.Rectangle box) {
		return new org.frisket.geometry.Bounds(box.x, box.y, (double) box.x + box.width, (double) box.y + box.height);
	}

	/** Begins; returns at once. Only for the UI thread. */
	public void start() {
		bar.begin(request.title());
		try {
			printer = new Printer(request.data());
			place = place(printer);
		} catch (SWTError | IllegalArgumentException e) {
			failed(NLS.bind(Messages.PaperRun_noPrinter, e.getMessage()));
			return;
		}
		if (!printer.startJob(request.title())) {
			failed(Messages.PaperRun_refused);
			return;
		}
		work(() -> {
			pages = FilePages.of(request.sheet().print(), bar);
			return this::begin;
		});
	}

	/** Something that takes its time, and what the UI thread does then. */
	private interface Work {
		Runnable run() throws IOException;
	}

	private void work(Work work) {
		Job job = Job.createSystem(request.title(), monitor -> {
			Runnable then;
			try {
				bar.check();
				then = work.run();
			} catch (CancellationException e) {
				then = this::cancelled;
			} catch (IOException e) {
				then = () -> failed(e.getMessage());
			} catch (RuntimeException | LinkageError e) {
				ILog.of(PaperRun.class).error(e.toString(), e);
				then = () -> failed(e.toString());
			}
			Runnable next = then;
			if (!display.isDisposed()) {
				display.asyncExec(next);
			}
		});
		job.setPriority(Job.SHORT);
		job.schedule();
	}

	private void begin() {
		PrinterData data = request.data();
		boolean range = data.scope == PrinterData.PAGE_RANGE;
		for (int i = 0; i < pages.count(); i++) {
			if (!range || i + 1 >= data.startPage && i + 1 <= data.endPage) {
				wanted.add(i);
			}
		}
		nextPage();
	}

	private void nextPage() {
		if (page == wanted.size()) {
			printer.endJob();
			finish();
			bar.ended(() -> line.setMessage(NLS.bind(Messages.PaperRun_done, request.title())));
			return;
		}
		if (!printer.startPage()) {
			failed(Messages.PaperRun_refused);
			return;
		}
		gc = new GC(printer);
		strips = place.strips(request.sheet().print().faces().page());
		strip = 0;
		nextStrip();
	}

	private void nextStrip() {
		bar.worked((page + (double) strip / Math.max(1, strips.size())) / wanted.size());
		if (strip == strips.size()) {
			marks();
			gc.dispose();
			gc = null;
			printer.endPage();
			page++;
			nextPage();
			return;
		}
		Strip next = strips.get(strip++);
		int from = wanted.get(page);
		work(() -> {
			BufferedImage image = pages.image(from, next.piece(), next.pixels(), next.rows(), false);
			ImageData data = PaperPixels.isBlank(image) ? null : PaperPixels.of(image);
			return () -> paint(next, data);
		});
	}

	/** @param data null for nothing */
	private void paint(Strip where, ImageData data) {
		if (data != null) {
			Image image = new Image(printer, data);
			gc.drawImage(image, 0, 0, data.width, data.height, where.x(), where.y(), where.width(), where.height());
			image.dispose();
		}
		nextStrip();
	}

	private void marks() {
		gc.setBackground(printer.getSystemColor(SWT.COLOR_BLACK));
		gc.setFillRule(SWT.FILL_EVEN_ODD);
		for (Region mark : PageMarks.of(request.sheet().print(), wanted.get(page) > 0)) {
			Path path = CurvePath.of(printer, mark.toOutline(), place.toUnits());
			gc.fillPath(path);
			path.dispose();
		}
	}

	private void cancelled() {
		printer.cancelJob();
		finish();
		bar.ended(() -> line.setMessage(Messages.PaperRun_cancelled));
	}

	private void failed(String message) {
		if (printer != null && !printer.isDisposed()) {
			printer.cancelJob();
		}
		finish();
		bar.ended(() -> {
			line.setErrorMessage(Messages.PaperRun_failed);
			MessageDialog.openError(shell, Messages.PaperRun_title, message);
		});
	}

	private void finish() {
		if (gc != null) {
			gc.dispose();
		}
		if (printer != null && !printer.isDisposed()) {
			printer.dispose();
		}
		if (pages != null) {
			try {
				pages.close();
			} catch (IOException e) {
				// only memory was open
			}
		}
	}
}
