package org.frisket.ui.bench.internal.print;

import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.frisket.prepare.layout.PageSetup;

/** Prints pages one after another; between two of them the window does whatever else is due. */
final class PrintRun {

	private static final double MM_PER_INCH = 25.4;
	/** How far paper may be off its size, in mm, for printers count in their own units. */
	private static final double SLACK = 3;

	private final Display display;
	private final PagePainter painter;
	private final Consumer<String> progress;
	private Printer printer;
	private int last;
	private int next;

	/** @param progress told in words how far it is, and what went wrong */
	PrintRun(Display display, PagePainter painter, Consumer<String> progress) {
		this.display = display;
		this.painter = painter;
		this.progress = progress;
	}

	/** Begins to print, unless the printer has other paper than the pages are made for. */
	void start(PrinterData data) {
		printer = new Printer(data);
		String wrong = wrongPaper();
		boolean range = data.scope == PrinterData.PAGE_RANGE;
		next = range ? Math.max(0, data.startPage - 1) : 0;
		last = Math.min(painter.layout().pages(), range ? data.endPage : painter.layout().pages());
		if (wrong == null && !printer.startJob(painter.title())) {
			wrong = Messages.PrintRun_refused;
		}
		if (wrong != null) {
			printer.dispose();
			progress.accept(wrong);
		} else {
			display.asyncExec(this::printNext);
		}
	}

	/** Null if it is the right one. */
	private String wrongPaper() {
		PageSetup setup = painter.layout().setup();
		Point dpi = printer.getDPI();
		double width = printer.getBounds().width * MM_PER_INCH / dpi.x;
		double height = printer.getBounds().height * MM_PER_INCH / dpi.y;
		return Math.abs(width - setup.width()) <= SLACK && Math.abs(height - setup.height()) <= SLACK ? null
				: NLS.bind(Messages.PrintRun_otherPaper, Math.round(width), Math.round(height));
	}

	private void printNext() {
		if (next >= last) {
			printer.endJob();
			printer.dispose();
			progress.accept(Messages.PrintRun_done);
			return;
		}
		progress.accept(NLS.bind(Messages.PrintRun_page, next + 1, last));
		if (!printer.startPage()) {
			printer.cancelJob();
			printer.dispose();
			progress.accept(Messages.PrintRun_refused);
			return;
		}
		GC gc = new GC(printer);
		// the origin is where the printer can begin to print, and not the corner of the paper
		Rectangle edge = printer.computeTrim(0, 0, 0, 0);
		painter.paint(gc, next, new Ground(printer.getDPI().x / MM_PER_INCH, edge.x, edge.y));
		gc.dispose();
		printer.endPage();
		next++;
		display.asyncExec(this::printNext);
	}
}
