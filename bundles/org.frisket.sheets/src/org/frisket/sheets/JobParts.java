package org.frisket.sheets;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;

/**
 * The parts of a job: what comes off a sheet as one.
 * <ul>
 * <li>What lies in a piece that is cut, kiss cut or perforated round belongs to it: holes, creases, drawn words, a
 * printed picture. So does what lies across its edge. What lies in a hole of it does not.
 * <li>Elements of a group stay together on each layer; so do weed lines and what they go round.
 * <li>Lines on no such piece are a part by themselves, and so large as their box. What is only printed is none.
 * <li>What is on a back layer is no part either: it goes with the part it is on the back of.
 * <li>Pieces of an element stay as they are set, unless they are to lie <em>apart</em>: then each of them is a part, and
 * groups do not hold them.
 * </ul>
 * A part is known by the id of the element that encloses all others of it. Where there are several, as in a group, it is
 * that of the lowest one that is cut. Pieces that lie apart have behind it # and their number, from 1, in the order of
 * {@link org.frisket.geometry.Region#pieces()}: by the topmost place of each.
 */
public final class JobParts {

	private JobParts() {
	}

	/**
	 * What has to find room on sheets, in the order of layers and elements; one copy of each. Nothing that is hidden.
	 *
	 * @param apart whether the pieces of an element are parts by themselves
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static List<SheetPart> of(PreparedJob job, boolean apart, Tolerance tolerance, Monitor monitor) {
		List<SheetPart> parts = new ArrayList<>();
		for (PreparedLayer layer : job.layers()) {
			if (!layer.layer().isBack()) {
				parts.addAll(new LayerParts(job, layer, apart, tolerance, monitor).parts());
			}
		}
		return parts;
	}
}
