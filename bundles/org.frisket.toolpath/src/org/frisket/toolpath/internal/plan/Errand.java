package org.frisket.toolpath.internal.plan;

import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.toolpath.Stroke;

/** What is done without anything else in between. It can be begun at several places. */
abstract class Errand {

	/** Where the axis is set down first and where it is lifted last. */
	record Gate(Point in, Point out) {
	}

	final String tool;
	final int passes;
	/** Of the box around it, in mm². */
	final double size;

	Errand(String tool, int passes, double size) {
		this.tool = tool;
		this.passes = passes;
		this.size = size;
	}

	/** The places it can be begun at, one at least. */
	abstract List<Gate> gates();

	/** The gate that is begun where this one ends, and ends where it is begun; itself if there is none. */
	int back(int gate) {
		return gate;
	}

	/** Adds the strokes for some passes, begun at a gate. */
	abstract void work(int gate, int first, int last, List<Stroke> strokes);
}
