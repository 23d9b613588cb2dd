package org.frisket.material.calibration;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.tools.Machine;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;

/**
 * A long cross for the pen. Its arms are measured, and the four distances between neighbouring ends.
 *
 * @param width  of the arm from left to right, in mm
 * @param height of the arm from top to bottom, in mm
 */
public record ScaleSheet(double width, double height) {

	/** A short cross measures nothing. */
	private static final double LEAST = 20;
	/** Half the length of the bar at each end, in mm. */
	private static final double BAR = 2;
	private static final double STEP = 10;

	public ScaleSheet {
		if (!(width >= LEAST) || !(height >= LEAST) || !(width <= 10_000) || !(height <= 10_000)) {
			throw new IllegalArgumentException(NLS.bind(Messages.ScaleSheet_size, LEAST));
		}
	}

	/** As long as the machine allows, in full centimetres. */
	public static ScaleSheet on(Machine machine) {
		return new ScaleSheet(Math.floor((machine.area().usableWidth() - 2 * BAR) / STEP) * STEP,
				Math.floor((machine.area().usableHeight() - 2 * BAR) / STEP) * STEP);
	}

	/** The cross as a job; its ends lie {@code BAR} inside the zero of the bench. */
	public Job job() {
		Job job = Jobs.create("scale-sheet", Messages.ScaleSheet_title);
		job.setNotes(NLS.bind(Messages.ScaleSheet_notes, width, height));
		double left = BAR;
		double right = BAR + width;
		double top = BAR;
		double bottom = BAR + height;
		double x = BAR + width / 2;
		double y = BAR + height / 2;
		Element cross = Jobs.addOutline(Jobs.addLayer(job, Messages.ScaleSheet_title),
				line(left, y, right, y) + line(x, top, x, bottom) + line(left, y - BAR, left, y + BAR)
						+ line(right, y - BAR, right, y + BAR) + line(x - BAR, top, x + BAR, top)
						+ line(x - BAR, bottom, x + BAR, bottom));
		cross.setName(Messages.ScaleSheet_title);
		Jobs.addOperation(cross, OperationKind.DRAW);
		return job;
	}

	private static String line(double x1, double y1, double x2, double y2) {
		return "M" + x1 + ' ' + y1 + 'L' + x2 + ' ' + y2;
	}
}
