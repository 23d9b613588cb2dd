package org.frisket.prepare.layout;

/**
 * On what and how large a job is printed.
 *
 * @param lying whether the longer side of the paper runs across
 * @param fit   whether a job that is too large is made smaller to come onto one page; else it is printed at true size
 *              over several pages
 */
public record PageSetup(Paper paper, boolean lying, boolean fit) {

	/** Nothing is printed nearer to the edge of the paper, in mm: most printers cannot. */
	public static final double MARGIN = 10;

	/** The strip at the foot of each page with what the picture is of, in mm. */
	public static final double CAPTION = 16;

	/** How much of the job two neighbouring pages share, in mm. */
	public static final double OVERLAP = 12;

	public double width() {
		return lying ? paper.height() : paper.width();
	}

	public double height() {
		return lying ? paper.width() : paper.height();
	}

	/** Width of the part that shows the job. */
	public double areaWidth() {
		return width() - 2 * MARGIN;
	}

	/** Height of the part that shows the job. */
	public double areaHeight() {
		return height() - 2 * MARGIN - CAPTION;
	}
}
