package org.frisket.prepare;

import java.util.List;

import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.Repair;

/**
 * An element before its curves were united and cleaned, and what cleaning then put right. It is kept in the element's
 * own frame: there the curves that cleaning left alone share their points with the region's, so that it takes little
 * room.
 *
 * @param curves    as they were set or drawn; the region itself for what was never cleaned
 * @param repairs   with their places in the same frame
 * @param placement from there into the job's frame
 */
public record Uncleaned(Outline curves, List<Repair> repairs, Transform placement) {

	public static final Uncleaned NOTHING = new Uncleaned(Outline.EMPTY, List.of(), Transform.IDENTITY);

	public Uncleaned {
		repairs = List.copyOf(repairs);
	}

	/** Of a region that was computed, so that there was nothing to clean. */
	public static Uncleaned of(Region region) {
		return new Uncleaned(region.toOutline(), List.of(), Transform.IDENTITY);
	}

	public Uncleaned placed(Transform transform) {
		return new Uncleaned(curves, repairs, placement.then(transform));
	}

	/** How often cleaning did this. */
	public long count(Repair.Kind kind) {
		return repairs.stream().filter(repair -> repair.kind() == kind).count();
	}
}
