package org.frisket.material.calibration;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Transform;
import org.frisket.geometry.shapes.ShapePath;
import org.frisket.material.tools.Blade;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;

/**
 * A sheet of circles and squares, each cell led by the axis for another offset. Because the paths are those of the axis
 * already, it has to be run with every compensation of the machine switched off, the offset in its driver set to zero.
 *
 * @param offsets in mm, ascending; the first cell is on the left
 */
public record OffsetSheet(List<Double> offsets) {

	/** Cells that one sheet has at most. */
	public static final int MOST = 12;

	/** Of the square, in mm. */
	static final double SIDE = 8;
	/** Of the circle, in mm; small, since there an offset shows most. */
	static final double RADIUS = 1.5;
	/** How far a chord of an arc of the axis may lie from it, in mm. */
	private static final double CHORD = 0.002;
	private static final double PITCH = 13;
	/** To find the cells: each has as many pen strokes beside it as its number says. */
	private static final double TALLY = 2.5;

	public OffsetSheet {
		offsets = List.copyOf(offsets);
		if (offsets.isEmpty() || offsets.size() > MOST || offsets.stream().anyMatch(each -> !(each >= 0 && each <= 1))) {
			throw new IllegalArgumentException(NLS.bind(Messages.OffsetSheet_range, MOST));
		}
	}

	/** Offsets in steps about what the blade is said to have, none below zero. */
	public static OffsetSheet about(Blade blade, double step, int cells) {
		List<Double> offsets = new ArrayList<>();
		double first = Math.max(0, blade.offset() - step * ((cells - 1) / 2));
		for (int i = 0; i < cells; i++) {
			offsets.add(Math.rint((first + i * step) * 1e6) / 1e6);
		}
		return new OffsetSheet(offsets);
	}

	/** The sheet as a job, its upper left corner at the zero of the bench. */
	public Job job() {
		Job job = Jobs.create("offset-sheet", Messages.OffsetSheet_title);
		job.setNotes(Messages.OffsetSheet_notes);
		Layer layer = Jobs.addLayer(job, Messages.OffsetSheet_title);
		for (int i = 0; i < offsets.size(); i++) {
			Element tally = Jobs.addOutline(layer, tally(i));
			tally.setName(Integer.toString(i + 1));
			Jobs.addOperation(tally, OperationKind.DRAW);
		}
		for (int i = 0; i < offsets.size(); i++) {
			Element cell = Jobs.addOutline(layer, PathData.format(cell(offsets.get(i))
					.transformed(Transform.translation(1 + i * PITCH, 1 + TALLY + 1))));
			cell.setName((i + 1) + ": " + offsets.get(i) + " mm");
			Jobs.addOperation(cell, OperationKind.CUT);
		}
		return job;
	}

	private static String tally(int cell) {
		StringBuilder path = new StringBuilder();
		for (int stroke = 0; stroke <= cell; stroke++) {
			double x = 1 + cell * PITCH + stroke * 0.8;
			path.append("M").append(x).append(" 0L").append(x).append(' ').append(TALLY);
		}
		return path.toString();
	}

	/** A square and below it a circle, as the axis has to run for this offset. */
	static Outline cell(double offset) {
		double axis = BladeGeometry.axisRadius(RADIUS, offset);
		Outline circle = PathData.parse(ShapePath.ellipse(2 * axis, 2 * axis))
				.transformed(Transform.translation(SIDE / 2 - axis, SIDE + 2 + RADIUS - axis));
		return PathData.parse(square(offset)).plus(circle);
	}

	/**
	 * Counter-clockwise to the viewer from the upper left corner: each side is shifted forward by the offset, and round
	 * each corner runs an arc.
	 */
	private static String square(double offset) {
		double[][] corners = { { 0, SIDE }, { SIDE, SIDE }, { SIDE, 0 }, { 0, 0 } };
		double[][] along = { { 0, 1 }, { 1, 0 }, { 0, -1 }, { -1, 0 } };
		if (offset == 0) {
			return ShapePath.rectangle(SIDE, SIDE);
		}
		StringBuilder path = new StringBuilder("M0 " + offset);
		int chords = (int) Math.ceil(Math.PI / 2 / (2 * Math.acos(1 - Math.min(1, CHORD / offset))));
		for (int i = 0; i < corners.length; i++) {
			double[] from = along[i];
			double[] to = along[(i + 1) % along.length];
			for (int chord = 0; chord <= chords; chord++) {
				double angle = Math.PI / 2 * chord / chords;
				double x = corners[i][0] + offset * (Math.cos(angle) * from[0] + Math.sin(angle) * to[0]);
				double y = corners[i][1] + offset * (Math.cos(angle) * from[1] + Math.sin(angle) * to[1]);
				path.append('L').append(round(x)).append(' ').append(round(y));
			}
		}
		return path.append('Z').toString();
	}

	private static double round(double value) {
		return Math.rint(value * 1e6) / 1e6;
	}

	/** The contours of a cell's paths; for checks. */
	static List<Contour> contours(double offset) {
		return cell(offset).contours();
	}
}
