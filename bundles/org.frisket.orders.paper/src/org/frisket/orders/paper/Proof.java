package org.frisket.orders.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.page.Ink;
import org.frisket.page.PagePainter;
import org.frisket.page.Words;
import org.frisket.page.flow.Block;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.FlowedPages;
import org.frisket.page.flow.ScaleBar;
import org.frisket.page.flow.SignBox;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.layout.PageSetup;

/**
 * What a customer is shown and signs: the job at its true size if a page has room for it, upright or lying, else at a stated
 * scale; its overall size, its colours, and a line for the approval.
 */
public final class Proof {

	/** What one mm of the job may be on paper, in steps that people can reckon with. */
	private static final double[] SCALES = { 1, 1 / 1.5, 1 / 2.0, 1 / 2.5, 1 / 3.0, 1 / 4.0, 1 / 5.0, 1 / 7.5, 1 / 10.0, 1 / 15.0,
			1 / 20.0, 1 / 25.0, 1 / 30.0, 1 / 40.0, 1 / 50.0, 1 / 100.0, 1 / 200.0, 1 / 500.0, 1 / 1000.0 };
	private static final double LEAST_HEIGHT = 60;
	/** Beside and below the picture, for the lines of its size. */
	private static final double DIMENSIONS = 9;
	private static final double TICK = 2;
	/** Above and below the picture. */
	private static final double GAPS = 6.1;
	private static final double SWATCH = 4;
	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final Ink LINE = new Ink("#333333", 0.12, List.of());

	private final JobWork work;
	private final Figures figures;
	private final FlowedPages pages;
	private final Column column;
	private double scale;

	private Proof(JobWork work, PaperForm form, boolean lying) {
		this.work = work;
		figures = form.figures();
		pages = new FlowedPages(new PageSetup(form.paper(), lying, true), Titles.of(Messages.Proof_title, work.job()));
		column = pages.column();
	}

	/**
	 * Writes it as PDF.
	 *
	 * @throws IOException if the stream fails, a picture cannot be read, or this installation lacks the font of its pages
	 */
	public static void write(JobWork work, PaperForm form, OutputStream out) throws IOException {
		Proof upright = new Proof(work, form, false);
		upright.make();
		Proof lying = new Proof(work, form, true);
		lying.make();
		Proof better = lying.scale > upright.scale ? lying : upright;
		better.pages.write(better.column, work.identity(), out);
	}

	private void make() throws IOException {
		facts();
		List<Block> below = below();
		double room = pages.room() - height(column) - below.stream().mapToDouble(Block::height).sum() - GAPS;
		Bounds shown = work.prepared().visibleBounds();
		if (shown.isEmpty()) {
			column.gap();
			column.text(Messages.Proof_nothing, 0, Column.BLACK);
		} else {
			picture(shown, Math.max(LEAST_HEIGHT, room));
		}
		column.gap();
		below.forEach(column::add);
	}

	private static double height(Column column) {
		return column.pages(Double.MAX_VALUE).stream().flatMap(List::stream).mapToDouble(Block::height).sum();
	}

	private void facts() throws IOException {
		Job job = work.job();
		double[] shares = { 0.13, 0.37, 0.13, 0.37 };
		column.row(List.of(Messages.Docket_number, known(job.getNumber()), Messages.Docket_customer, known(job.getCustomer())),
				shares, Column.BLACK);
		column.row(List.of(Messages.Docket_quantity, Figures.number(job.getQuantity(), 0), Messages.Docket_due,
				job.getDue() == null ? Messages.Docket_unknown : Days.whole(job.getDue())), shares, Column.BLACK);
		column.gap();
	}

	private static String known(String text) {
		return text == null || text.isBlank() ? Messages.Docket_unknown : text;
	}

	private void picture(Bounds shown, double room) {
		double fits = Math.min((column.width() - DIMENSIONS) / shown.width(),
				(room - DIMENSIONS - 3 - ScaleBar.HEIGHT) / shown.height());
		// beyond the steps it is as small as it must be
		scale = fits;
		for (int i = SCALES.length - 1; i >= 0; i--) {
			if (SCALES[i] <= fits + 1e-9) {
				scale = SCALES[i];
			}
		}
		JobPicture picture = new JobPicture(work.prepared(), scale);
		ScaleBar bar = new ScaleBar(scale, figures);
		String said = scale == 1 ? Messages.Proof_trueSize : NLS.bind(Messages.Proof_scale, bar.scaleText());
		String width = figures.length(shown.width());
		String height = figures.length(shown.height());
		column.add(new Block(picture.height() + DIMENSIONS + 3 + ScaleBar.HEIGHT, List.of(width, height, said, bar.text()),
				(painter, top) -> {
					double left = column.left();
					picture.paint(painter, left, top);
					across(painter, left, top + picture.height() + 3, picture.width(), width);
					down(painter, left + picture.width() + 3, top, picture.height(), height);
					double y = top + picture.height() + DIMENSIONS + 1;
					bar.paint(painter, left, y);
					painter.words(said, left + column.width() / 2, y + Column.TEXT, Column.TEXT, column.width() / 2,
							Column.BLACK);
				}));
	}

	private static void across(PagePainter painter, double left, double y, double length, String text) throws IOException {
		stroke(painter, left, y, left + length, y);
		stroke(painter, left, y - TICK / 2, left, y + TICK / 2);
		stroke(painter, left + length, y - TICK / 2, left + length, y + TICK / 2);
		double width = Words.width(text, Column.TEXT);
		painter.words(text, left + Math.max(0, (length - width) / 2), y + TICK / 2 + Column.TEXT + 0.4, Column.TEXT, width + 0.1,
				Column.BLACK);
	}

	/** Its words stand upright beside its foot, since they are read more easily than turned ones. */
	private void down(PagePainter painter, double x, double top, double length, String text) throws IOException {
		stroke(painter, x, top, x, top + length);
		stroke(painter, x - TICK / 2, top, x + TICK / 2, top);
		stroke(painter, x - TICK / 2, top + length, x + TICK / 2, top + length);
		double width = Words.width(text, Column.TEXT);
		double right = column.left() + column.width();
		boolean beside = x + 1.5 + width <= right;
		painter.words(text, beside ? x + 1.5 : right - width, beside ? top + length / 2 + Column.TEXT / 2
				: top + length + TICK / 2 + Column.TEXT + 0.4, Column.TEXT, width + 0.1, Column.BLACK);
	}

	private static void stroke(PagePainter painter, double x1, double y1, double x2, double y2) throws IOException {
		painter.stroke(Outline.of(Contour.open(List.of(new Line(new Point(x1, y1), new Point(x2, y2))))), LINE);
	}

	/** All that stands under the picture. */
	private List<Block> below() throws IOException {
		Column foot = new Column(column.left(), column.width());
		Map<String, String> colours = colours();
		if (!colours.isEmpty()) {
			foot.heading(Messages.Proof_colours);
		}
		colours.forEach((name, colour) -> foot.add(swatch(name, colour)));
		foot.gap();
		foot.text(Messages.Proof_coloursDiffer, 0, Column.BLACK);
		foot.heading(Messages.Proof_approval);
		foot.text(Messages.Proof_check, 0, Column.BLACK);
		foot.add(SignBox.row(foot, List.of(new SignBox(Messages.Proof_name, "", 0.35), new SignBox(Messages.Proof_date, "", 0.2),
				new SignBox(Messages.Proof_signature, "", 0.45))));
		List<Block> blocks = new ArrayList<>();
		foot.pages(Double.MAX_VALUE).forEach(blocks::addAll);
		return blocks;
	}

	/** By name with the stock, in the order of the layers that show something; empty for what has no colour. */
	private Map<String, String> colours() {
		Map<String, String> colours = new LinkedHashMap<>();
		for (PreparedLayer layer : work.prepared().layers()) {
			String colour = layer.layer().getColour();
			if (!layer.shown().isEmpty()) {
				colours.putIfAbsent(Titles.joined(layer.layer().getName(), work.stockName(layer.layer().getStock())),
						colour != null && COLOUR.matcher(colour).matches() ? colour : "");
			}
		}
		return colours;
	}

	private Block swatch(String name, String colour) {
		return new Block(SWATCH + 1.4, List.of(name), (painter, top) -> {
			if (!colour.isEmpty()) {
				painter.fill(Column.rectangle(column.left(), top, 2 * SWATCH, SWATCH), colour);
			}
			Column.box(painter, column.left(), top, 2 * SWATCH, SWATCH);
			painter.words(name, column.left() + 2 * SWATCH + 2, top + SWATCH / 2 + Column.TEXT / 2, Column.TEXT,
					column.width() - 2 * SWATCH - 2, Column.BLACK);
		});
	}
}
