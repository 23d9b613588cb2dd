package org.frisket.run.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.page.Ink;
import org.frisket.page.PagePainter;
import org.frisket.page.flow.Block;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.FlowedPages;
import org.frisket.page.flow.SignBox;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.layout.PageSetup;
import org.frisket.run.MachineRun;
import org.frisket.run.RunCost;
import org.frisket.toolpath.Stroke;

/**
 * What goes with a sheet to the machine: a picture of it, the tools in their order with settings and stops, what it takes,
 * whose it is, what to mind, and boxes to sign. The same run makes the same bytes: no clock is asked.
 */
public final class RunSheet {

	private static final double MARGIN = FlowedPages.MARGIN;
	private static final double SAMPLE = 18;
	private static final double NUMBER_ROOM = 7;
	private static final double AROUND = 5;

	private final MachineRun run;
	private final PreparedJob content;
	private final RunCost cost;
	private final RunSheetForm form;
	private final Figures figures;
	private final FlowedPages pages;
	private final Column column;

	private RunSheet(MachineRun run, PreparedJob content, RunCost cost, RunSheetForm form) {
		this.run = run;
		this.content = content;
		this.cost = cost;
		this.form = form;
		figures = new Figures(form.inches());
		pages = new FlowedPages(new PageSetup(form.paper(), false, true), title());
		column = pages.column();
	}

	/**
	 * Writes it on A4 in mm. If the content's layers are called like a sheet of its job, that is the sheet.
	 *
	 * @param content what is worked, in the frame of the run
	 */
	public static void write(MachineRun run, PreparedJob content, RunCost cost, OutputStream out) throws IOException {
		Optional<Sheet> sheet = content.job().getSheets().stream().filter(each -> content.layers().stream()
				.anyMatch(layer -> each.getId().equals(layer.layer().getId()))).findFirst();
		write(run, content, cost, RunSheetForm.of(sheet), out);
	}

	/**
	 * Writes it as PDF.
	 *
	 * @param content what is worked, in the frame of the run
	 * @throws IOException if the stream fails, or this installation lacks the font of its pages
	 */
	public static void write(MachineRun run, PreparedJob content, RunCost cost, RunSheetForm form, OutputStream out)
			throws IOException {
		new RunSheet(run, content, cost, form).write(out);
	}

	private void write(OutputStream out) throws IOException {
		SheetFacts.add(column, run, content, form);
		Warnings warnings = Warnings.of(run);
		column.gap();
		for (String blocking : warnings.blocking()) {
			column.framed(NLS.bind(Messages.RunSheet_blocked, blocking));
		}
		column.add(new SheetPicture(run, content, shown(), figures, column).block());
		mind(warnings);
		legs();
		CostRows.add(column, run, cost);
		signatures();
		pages.write(column, identity(), out);
	}

	private String title() {
		Job job = content.job();
		List<String> parts = new ArrayList<>();
		parts.add(Messages.RunSheet_title);
		if (job.getNumber() != null) {
			parts.add(job.getNumber());
		}
		if (job.getTitle() != null) {
			parts.add(job.getTitle().lines().findFirst().orElse(""));
		}
		return String.join(" · ", parts);
	}

	/** What tells this sheet from others: its job, and where its strokes begin. */
	private String identity() {
		return content.job().getId() + " " + run.run().strokes().map(Stroke::start)
				.map(Point::toString).collect(Collectors.joining());
	}

	/** The sheet, or what the job on the bench takes up. */
	private Bounds shown() {
		Optional<Sheet> sheet = form.sheet().filter(each -> each.getWidth() > 0 && each.getHeight() > 0);
		if (sheet.isPresent()) {
			return new Bounds(0, 0, sheet.get().getWidth(), sheet.get().getHeight());
		}
		Bounds bounds = content.visibleBounds();
		return (bounds.isEmpty() ? new Bounds(0, 0, 0, 0) : bounds).grown(AROUND);
	}

	private void legs() throws IOException {
		column.heading(Messages.RunSheet_order);
		if (run.run().legs().isEmpty()) {
			column.text(Messages.RunSheet_nothing, 0, Column.DARK);
		}
		for (int i = 0; i < run.run().legs().size(); i++) {
			LegText leg = new LegText(run, i);
			List<Block> parts = new ArrayList<>();
			parts.add(Block.room(1.5));
			if (i == 0 || leg.stops()) {
				parts.add(column.text((leg.stops() ? Messages.RunSheet_stop + " " : "") + leg.before(), NUMBER_ROOM, 0,
						Column.BLACK));
			}
			parts.add(head(leg, i + 1));
			parts.add(column.text(leg.settings(), NUMBER_ROOM, 0, Column.BLACK));
			parts.add(column.text(leg.figures() + " · " + leg.basis(), NUMBER_ROOM, 0, Column.DARK));
			column.together(parts);
			for (String reason : leg.reasons()) {
				column.text(NLS.bind(Messages.RunSheet_reason, reason), NUMBER_ROOM + 2, Column.DARK);
			}
		}
	}

	/** Its number as in the picture, what is done, how its lines look there, and a box to tick. */
	private Block head(LegText leg, int number) {
		return new Block(5.4, List.of(String.valueOf(number), leg.head()), (painter, top) -> {
			SheetPicture.disc(painter, new Point(MARGIN + 2.3, top + 2.3), number, Ink.of(leg.kind()));
			double right = MARGIN + column.width();
			painter.words(leg.head(), MARGIN + NUMBER_ROOM, top + 3.6, Column.HEADING,
					column.width() - NUMBER_ROOM - SAMPLE - 10, Column.BLACK);
			painter.stroke(Outline.of(Contour.open(List.of(new Line(new Point(right - SAMPLE - 8, top + 2.4),
					new Point(right - 8, top + 2.4))))), Ink.of(leg.kind()));
			Column.box(painter, right - 4, top + 0.4, 4, 4);
		});
	}

	private void mind(Warnings warnings) throws IOException {
		column.heading(Messages.RunSheet_mind);
		for (String text : warnings.others()) {
			column.text(NLS.bind(Messages.RunSheet_reason, text), 0, Column.BLACK);
		}
	}

	private void signatures() {
		column.heading(Messages.RunSheet_signed);
		column.add(SignBox.row(column, SignBox.alike(List.of(Messages.RunSheet_signSetUp, Messages.RunSheet_signTest,
				Messages.RunSheet_signDone, Messages.RunSheet_signCounted))));
	}
}
