package org.frisket.ui.bench.internal.nodes;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** Between the frame of the job, where the pointer is, and the own frame of an outline, where its path is. */
record PathFrame(CanvasZoom zoom, Transform toJob, Transform toOwn) {

	/** @throws ArithmeticException if the map flattens the plane */
	static PathFrame of(CanvasZoom zoom, Transform toJob) {
		return new PathFrame(zoom, toJob, toJob.inverse());
	}

	Point toJob(Point own) {
		return toJob.apply(own);
	}

	Point toOwn(Point job) {
		return toOwn.apply(job);
	}

	/** A displacement in the job's frame as one in the own frame. */
	Point shiftToOwn(Point shift) {
		return toOwn.apply(shift).minus(toOwn.apply(Point.ORIGIN));
	}
}
