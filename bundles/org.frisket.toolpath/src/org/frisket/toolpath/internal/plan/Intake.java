package org.frisket.toolpath.internal.plan;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Segment;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.ToolMotion;

/** What of the lines can be worked. */
public final class Intake {

	/** In mm: a line that is shorter is noise. */
	private static final double NOTHING = 1e-6;

	private Intake() {
	}

	/**
	 * The lines that have a length. Points and lines without any are left out without a word: nothing of them would be
	 * seen.
	 *
	 * @throws IllegalArgumentException if a line names a tool that is not there, or has a place that is no number
	 */
	public static List<Line> worked(List<Line> lines, Map<String, ToolMotion> tools) {
		for (Line line : lines) {
			if (!tools.containsKey(line.tool())) {
				throw new IllegalArgumentException(name(line) + ": no tool " + line.tool());
			}
			List<Segment> segments = line.contour().segments();
			for (int i = 0; i < segments.size(); i++) {
				if (!isFinite(segments.get(i))) {
					throw new IllegalArgumentException(name(line) + ": segment " + (i + 1) + " has a place that is no number");
				}
			}
		}
		return lines.stream().filter(line -> !line.contour().isEmpty())
				.filter(line -> extent(line.contour().bounds()) > NOTHING).toList();
	}

	private static String name(Line line) {
		return "line " + line.id() + " of job " + line.job();
	}

	private static boolean isFinite(Segment segment) {
		return segment.start().isFinite() && segment.end().isFinite()
				&& (!(segment instanceof Cubic cubic) || cubic.control1().isFinite() && cubic.control2().isFinite());
	}

	private static double extent(Bounds box) {
		return Math.max(box.width(), box.height());
	}
}
