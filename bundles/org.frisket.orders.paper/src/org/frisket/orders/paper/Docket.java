package org.frisket.orders.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.page.Words;
import org.frisket.page.flow.Block;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.FlowedPages;
import org.frisket.page.flow.ScaleBar;
import org.frisket.page.flow.SignBox;
import org.frisket.prepare.layout.PageSetup;

/**
 * The docket of a job: what goes with it through the workshop, on one page unless its lists are long. The same job makes the
 * same bytes: no clock is asked.
 */
public final class Docket {

	private static final double NUMBER = 13;
	private static final double CODE = 27;
	private static final double TALLEST_PICTURE = 70;
	private static final double PERCENT = 100;

	private final DocketFacts facts;
	private final JobWork work;
	private final Figures figures;
	private final FlowedPages pages;
	private final Column column;

	private Docket(DocketFacts facts, JobWork work, PaperForm form) {
		this.facts = facts;
		this.work = work;
		figures = form.figures();
		pages = new FlowedPages(new PageSetup(form.paper(), false, true), Titles.of(Messages.Docket_title, work.job()));
		column = pages.column();
	}

	/**
	 * Writes it as PDF.
	 *
	 * @throws IOException if the stream fails, a picture cannot be read, or this installation lacks the font of its pages
	 */
	public static void write(JobWork work, PaperForm form, OutputStream out) throws IOException {
		new Docket(DocketFacts.of(work, form), work, form).write(out);
	}

	private void write(OutputStream out) throws IOException {
		head();
		for (String text : facts.blocking()) {
			column.framed(NLS.bind(Messages.Docket_blocked, text));
		}
		if (!work.prepared().visibleBounds().isEmpty()) {
			picture();
		}
		parts();
		work();
		sheets();
		texts(Messages.Docket_mind, facts.cautions());
		texts(Messages.Docket_notes, facts.notes().lines().filter(line -> !line.isBlank()).toList());
		signatures();
		pages.write(column, work.identity(), out);
	}

	private void head() throws IOException {
		List<String> lines = new ArrayList<>();
		String number = facts.number().isEmpty() ? Messages.Docket_noNumber : facts.number();
		double quiet = facts.code().isEmpty() ? 0 : CODE * JobCode.QUIET / JobCode.size(facts.code());
		double room = column.width() - (facts.code().isEmpty() ? 0 : CODE + quiet);
		lines.add(number);
		lines.addAll(Words.lines(facts.title(), Column.TITLE, room));
		List<String[]> rows = List.of(
				new String[] { Messages.Docket_customer, known(facts.customer()) },
				new String[] { Messages.Docket_due, facts.due().map(Days::whole).orElse(Messages.Docket_unknown) },
				new String[] { Messages.Docket_stage, StageWords.of(facts.stage()) },
				new String[] { Messages.Docket_quantity, Figures.number(facts.quantity(), 0) });
		rows.forEach(row -> lines.addAll(List.of(row)));
		int titles = lines.size() - 1 - 2 * rows.size();
		double height = Math.max(CODE + quiet, NUMBER + 4 + titles * Column.TITLE * 2 + rows.size() * Column.HEADING * 1.9);
		column.add(new Block(height, lines, (painter, top) -> {
			double left = column.left();
			painter.words(number, left, top + NUMBER, NUMBER, room, Column.BLACK);
			double baseline = top + NUMBER + 4 + Column.TITLE;
			for (String title : lines.subList(1, 1 + titles)) {
				painter.words(title, left, baseline, Column.TITLE, room, Column.BLACK);
				baseline += Column.TITLE * 2;
			}
			for (String[] row : rows) {
				painter.words(row[0], left, baseline, Column.TEXT, 28, Column.DARK);
				painter.words(row[1], left + 30, baseline, Column.HEADING, room - 30, Column.BLACK);
				baseline += Column.HEADING * 1.9;
			}
			if (!facts.code().isEmpty()) {
				painter.fill(JobCode.modules(facts.code(), left + column.width() - CODE, top, CODE), Column.BLACK);
			}
		}));
	}

	private static String known(String text) {
		return text.isEmpty() ? Messages.Docket_unknown : text;
	}

	private void picture() {
		double scale = Math.min(1, Math.min(column.width() / facts.width(), TALLEST_PICTURE / facts.height()));
		JobPicture picture = new JobPicture(work.prepared(), scale);
		ScaleBar bar = new ScaleBar(scale, figures);
		column.gap();
		column.add(new Block(picture.height() + 3 + ScaleBar.HEIGHT, List.of(bar.text()), (painter, top) -> {
			picture.paint(painter, column.left(), top);
			bar.paint(painter, column.left(), top + picture.height() + 2);
		}));
	}

	private void parts() {
		column.heading(Messages.Docket_parts);
		if (facts.parts().isEmpty()) {
			column.row(List.of(Messages.Docket_nothing), new double[] { 1 }, Column.DARK);
			return;
		}
		double[] shares = { 0.46, 0.24, 0.15, 0.15 };
		String last = null;
		for (DocketFacts.Part part : facts.parts()) {
			String group = Titles.joined(part.stock(), part.colour());
			if (!group.equals(last)) {
				column.row(List.of(group, Messages.Docket_size, Messages.Docket_each, Messages.Docket_all), shares, Column.DARK);
				last = group;
			}
			column.row(List.of(part.title(), figures.size(part.width(), part.height()), Figures.number(part.each(), 0),
					Figures.number(part.all(), 0)), shares, Column.BLACK);
		}
	}

	private void work() throws IOException {
		if (facts.work().isEmpty()) {
			return;
		}
		column.heading(Messages.Docket_work);
		for (DocketFacts.Work each : facts.work()) {
			Block first = column.text(NLS.bind(Messages.Docket_workOf,
					new Object[] { each.stock(), each.operation(), each.tool() }), 0, 0, Column.BLACK);
			Block second = column.text(Titles.joined(each.settings(), each.basis(), String.join(", ", each.places())), 4, 0,
					Column.DARK);
			column.together(List.of(first, second));
		}
	}

	private void sheets() {
		if (facts.seconds() > 0 || !facts.sheets().isEmpty()) {
			column.heading(Messages.Docket_sheets);
		}
		double[] shares = { 0.2, 0.3, 0.2, 0.3 };
		for (DocketFacts.Sheet sheet : facts.sheets()) {
			column.row(List.of(sheet.name(), sheet.stock(), figures.size(sheet.width(), sheet.height()),
					NLS.bind(Messages.Docket_sheetFacts, new Object[] { sheet.parts(),
							Figures.number(sheet.utilisation() * PERCENT, 0), Figures.time(sheet.seconds()) })),
					shares, Column.BLACK);
		}
		if (facts.seconds() > 0) {
			column.row(List.of(NLS.bind(Messages.Docket_time, Figures.time(facts.seconds()))), new double[] { 1 }, Column.BLACK);
		}
	}

	private void texts(String heading, List<String> texts) throws IOException {
		if (texts.isEmpty()) {
			return;
		}
		column.heading(heading);
		for (String text : texts) {
			column.text(text, 0, Column.BLACK);
		}
	}

	private void signatures() {
		column.heading(Messages.Docket_signed);
		column.add(SignBox.row(column, facts.signed().stream().map(each -> new SignBox(StageWords.of(each.stage()), signed(each),
				1.0 / facts.signed().size())).toList()));
	}

	private static String signed(DocketFacts.Signed signed) {
		return Titles.joined(signed.day().map(Days::brief).orElse(""), signed.who());
	}
}
