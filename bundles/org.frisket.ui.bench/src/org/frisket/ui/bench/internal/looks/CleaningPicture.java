package org.frisket.ui.bench.internal.looks;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.RemovedStretches;
import org.frisket.prepare.PreparedElement;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * What the bench shows of an element before it was cleaned, in the job's frame.
 *
 * @param source    as it was set or drawn
 * @param removed   what cleaning took away of it
 * @param counts    what cleaning did
 * @param placement the element's transform for which this was made
 */
public record CleaningPicture(Outline source, Outline removed, CleaningCounts counts, Transform placement) {

	/**
	 * Takes its time: not for the UI thread.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	static CleaningPicture of(PreparedElement prepared, Tolerance tolerance, Monitor monitor) {
		Outline source = prepared.source();
		Outline after = prepared.region().toOutline().plus(new Outline(prepared.lines()));
		Outline removed = prepared.uncleaned().repairs().isEmpty() ? Outline.EMPTY
				: RemovedStretches.of(source, after, tolerance, monitor);
		return new CleaningPicture(source, removed, CleaningCounts.of(prepared.uncleaned(), removed),
				PictureMaker.transform(prepared.element().getTransform()));
	}
}
