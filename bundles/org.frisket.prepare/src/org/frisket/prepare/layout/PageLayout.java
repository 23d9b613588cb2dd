package org.frisket.prepare.layout;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * A job laid onto pages of paper. Pages are numbered from 0, along each row from the left and then row by row; all
 * places on paper are in mm from the top left corner of the page. An empty job has one page with nothing on it.
 */
public final class PageLayout {

	/** How long a mark at an end of a seam is, in mm. */
	private static final double MARK = 6;
	private static final double ROUNDING = 1e-6;
	private static final int LETTERS = 26;

	private final PageSetup setup;
	private final double scale;
	private final int columns;
	private final int rows;
	/** The place in the job's frame that comes to the top left of the first page. */
	private final Point corner;

	private PageLayout(PageSetup setup, Bounds content, double scale) {
		this.setup = setup;
		this.scale = scale;
		double width = content.width() * scale;
		double height = content.height() * scale;
		columns = tiles(width, setup.areaWidth());
		rows = tiles(height, setup.areaHeight());
		Point centre = content.isEmpty() ? Point.ORIGIN : content.centre();
		corner = new Point(centre.x() - covered(columns, setup.areaWidth()) / 2 / scale,
				centre.y() - covered(rows, setup.areaHeight()) / 2 / scale);
	}

	/** @param content what has to come onto the paper, in mm of the job's frame */
	public static PageLayout of(Bounds content, PageSetup setup) {
		double fitting = Math.min(setup.areaWidth() / Math.max(content.width(), ROUNDING),
				setup.areaHeight() / Math.max(content.height(), ROUNDING));
		return new PageLayout(setup, content, setup.fit() ? Math.min(1, fitting) : 1);
	}

	private static int tiles(double length, double area) {
		return length <= area + ROUNDING ? 1
				: (int) Math.ceil((length - PageSetup.OVERLAP - ROUNDING) / (area - PageSetup.OVERLAP));
	}

	private static double covered(int tiles, double area) {
		return tiles * area - (tiles - 1) * PageSetup.OVERLAP;
	}

	public PageSetup setup() {
		return setup;
	}

	/** Size on paper by size of the job: 1 at true size, never more. */
	public double scale() {
		return scale;
	}

	public int columns() {
		return columns;
	}

	public int rows() {
		return rows;
	}

	/** At most as many as can be counted. */
	public int pages() {
		return (int) Math.min(Integer.MAX_VALUE, (long) columns * rows);
	}

	/** The part of the paper that shows the job. */
	public Bounds area() {
		return new Bounds(PageSetup.MARGIN, PageSetup.MARGIN, PageSetup.MARGIN + setup.areaWidth(),
				PageSetup.MARGIN + setup.areaHeight());
	}

	/** The strip at the foot of the paper for what the picture is of. */
	public Bounds caption() {
		double top = PageSetup.MARGIN + setup.areaHeight();
		return new Bounds(PageSetup.MARGIN, top, setup.width() - PageSetup.MARGIN, top + PageSetup.CAPTION);
	}

	/** From the job's frame onto the paper of a page. */
	public Transform toPaper(int page) {
		return Transform.translation(-corner.x(), -corner.y()).then(Transform.scaling(scale, scale))
				.then(Transform.translation(PageSetup.MARGIN - column(page) * stepAcross(),
						PageSetup.MARGIN - row(page) * stepDown()));
	}

	/** What of the job a page shows, in mm of the job's frame. */
	public Bounds shown(int page) {
		Transform back = toPaper(page).inverse();
		Bounds area = area();
		return Bounds.of(back.apply(new Point(area.minX(), area.minY())))
				.with(back.apply(new Point(area.maxX(), area.maxY())));
	}

	private double stepAcross() {
		return setup.areaWidth() - PageSetup.OVERLAP;
	}

	private double stepDown() {
		return setup.areaHeight() - PageSetup.OVERLAP;
	}

	private int column(int page) {
		return page % columns;
	}

	private int row(int page) {
		return page / columns;
	}

	/** Which tile a page is: a letter for its column and a number for its row, such as {@code B1}. */
	public String tile(int page) {
		StringBuilder letters = new StringBuilder();
		for (int rest = column(page) + 1; rest > 0; rest = (rest - 1) / LETTERS) {
			letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
		}
		return letters.toString() + (row(page) + 1);
	}

	/**
	 * Marks to lay neighbouring pages on each other by: at both ends of each seam, which runs along the middle of what
	 * two pages share. The same mark lies on the same place of the job on both pages.
	 */
	public List<Line> marks(int page) {
		Bounds area = area();
		List<Line> marks = new ArrayList<>();
		for (double x : seams(area.minX(), area.maxX(), column(page), columns)) {
			marks.add(new Line(new Point(x, area.minY()), new Point(x, area.minY() + MARK)));
			marks.add(new Line(new Point(x, area.maxY() - MARK), new Point(x, area.maxY())));
		}
		for (double y : seams(area.minY(), area.maxY(), row(page), rows)) {
			marks.add(new Line(new Point(area.minX(), y), new Point(area.minX() + MARK, y)));
			marks.add(new Line(new Point(area.maxX() - MARK, y), new Point(area.maxX(), y)));
		}
		return marks;
	}

	private static List<Double> seams(double from, double to, int tile, int tiles) {
		List<Double> seams = new ArrayList<>();
		if (tile > 0) {
			seams.add(from + PageSetup.OVERLAP / 2);
		}
		if (tile < tiles - 1) {
			seams.add(to - PageSetup.OVERLAP / 2);
		}
		return seams;
	}
}
