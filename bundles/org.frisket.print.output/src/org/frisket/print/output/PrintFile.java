package org.frisket.print.output;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.apache.pdfbox.pdmodel.PDPage;
import org.eclipse.osgi.util.NLS;
import org.frisket.export.pdf.PageContent;
import org.frisket.export.pdf.PageFrame;
import org.frisket.export.pdf.PdfFile;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterException;
import org.frisket.sheets.LaidSheet;

/**
 * Writes what is printed on a sheet as PDF 1.7, in its true size: a page for the front and, if anything is on it, one for the
 * back. The media box is the sheet, the trim box what comes off it, the bleed box that with its bleed. Art, marks, code and
 * ruler are groups of their own that can be switched; none of them is a processing step of ISO 19593-1, for all of them are
 * to be printed. The lines to cut are steps of that standard, each kind a group apart, where they are asked for: not every
 * printer knows that it must not print them.
 * <p>
 * The back is what is seen after the sheet was turned over the chosen edge: the page is mirrored, so that printed on both
 * sides it lies on the front to the hair. Marks and code are there too, so that a blade finds the back as well.
 * <p>
 * With a printer profile all of a page is changed by the inverse of what the printer does, about the middle of the sheet,
 * which the document's subject says; boxes and steps stay those of the design.
 */
public final class PrintFile {

	/** In mm, as the PDF exporter draws steps. */
	private static final double STEP_LINE = 0.1;

	private PrintFile() {
	}

	/** @throws java.util.concurrent.CancellationException if the monitor cancels */
	public static void write(PrintSheet sheet, Monitor monitor, OutputStream out) throws IOException {
		Bounds whole = sheet.faces().page();
		Transform printer = sheet.options().printer().map(profile -> profile.forArt(whole.centre())).orElse(Transform.IDENTITY);
		try (PdfFile file = new PdfFile()) {
			page(file, sheet, sheet.front(), whole, Transform.IDENTITY, printer, monitor);
			if (!sheet.back().isEmpty()) {
				page(file, sheet, sheet.back(), whole, sheet.options().turn().over(whole.width(), whole.height()), printer, monitor);
			}
			monitor.check();
			Job job = sheet.faces().job();
			file.write(job.getTitle() == null ? "" : job.getTitle(), subject(sheet), out);
		}
	}

	private static void page(PdfFile file, PrintSheet sheet, List<PrintedArt> art, Bounds whole, Transform turned,
			Transform printer, Monitor monitor) throws IOException {
		Bounds trim = moved(sheet.trim().isEmpty() ? whole : sheet.trim(), turned);
		PageFrame frame = PageFrame.of(whole, trim);
		PDPage page = file.addPage(frame);
		page.setBleedBox(frame.box(sheet.bleed().isEmpty() ? trim : moved(sheet.bleed(), turned)));
		try (PrintContent content = new PrintContent(file, page, turned.then(printer).then(frame.toPage()), frame.scale())) {
			content.art(art, monitor);
			if (sheet.plan().isPresent()) {
				content.marks(sheet.plan().get().marks());
			}
			if (sheet.code().isPresent()) {
				content.code(sheet.code().get(), turned);
			}
			if (sheet.ruler().isPresent()) {
				content.ruler(sheet.ruler().get());
			}
		}
		if (sheet.options().steps()) {
			steps(file, page, frame, sheet, turned, monitor);
		}
	}

	private static void steps(PdfFile file, PDPage page, PageFrame frame, PrintSheet sheet, Transform turned,
			Monitor monitor) throws IOException {
		try (PageContent content = new PageContent(file, page, frame, STEP_LINE)) {
			Optional<LaidSheet> cut = new CutFace(sheet.faces(), Projection.of(turned), Tolerance.DEFAULT)
					.of(turned != Transform.IDENTITY, Optional.empty(), monitor);
			if (cut.isPresent()) {
				content.steps(cut.get().content(), monitor);
			}
		} catch (RegisterException never) {
			// only a projective map takes anything to infinity
			throw new IllegalStateException(never);
		}
	}

	private static Bounds moved(Bounds box, Transform by) {
		Point one = by.apply(new Point(box.minX(), box.minY()));
		return Bounds.of(one).with(by.apply(new Point(box.maxX(), box.maxY())));
	}

	/** Which sheet it is, and whether anything was done for the printer. */
	static String subject(PrintSheet sheet) {
		String number = sheet.faces().job().getNumber();
		String which = number == null || number.isBlank() ? NLS.bind(Messages.PrintFile_sheet, sheet.faces().number())
				: NLS.bind(Messages.PrintFile_jobSheet, number, sheet.faces().number());
		if (sheet.options().printer().isEmpty()) {
			return which + " " + Messages.PrintFile_asDesigned;
		}
		PrinterProfile profile = sheet.options().printer().get();
		return which + " " + NLS.bind(Messages.PrintFile_undone, new Object[] { profile.name(), profile.measured(),
				number(profile.scaleX()), number(profile.scaleY()), number(Math.toDegrees(profile.skew())) });
	}

	private static String number(double value) {
		return String.format(Locale.ROOT, "%.5f", value);
	}
}
