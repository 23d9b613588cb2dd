package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Artwork.Area;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;

/**
 * Drops contours too small or too narrow to be meant, and cuts off spikes: corners so sharp that their sides run within
 * the tolerance of each other.
 */
public final class Specks implements RepairStep {

	private static final double MOST = 50;

	private static final Option SPECK = Option.length("speck", Words.of("Specks_speck"), "0.1mm", 0, MOST);
	private static final Option SLIVER = Option.length("sliver", Words.of("Specks_sliver"), "0.03mm", 0, MOST);

	@Override
	public List<Option> options() {
		return List.of(SPECK, SLIVER);
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		List<Mend> mends = new ArrayList<>();
		List<Contour> taken = new ArrayList<>();
		double speck = options.length(SPECK);
		double sliver = options.length(SLIVER);
		List<Area> areas = new ArrayList<>();
		for (Area area : artwork.areas()) {
			List<Contour> kept = new ArrayList<>();
			for (Contour contour : area.outline().contours()) {
				monitor.check();
				if (isSmall(contour, speck)) {
					mends.add(new Mend("speck-removed", contour.bounds().centre(), Math.abs(contour.signedArea()), "mm2"));
					taken.add(contour);
				} else if (width(contour) < sliver) {
					mends.add(new Mend("sliver-removed", contour.bounds().centre(), Math.abs(contour.signedArea()), "mm2"));
					taken.add(contour);
				} else {
					kept.add(Spikes.cut(contour, tolerance.mm() / 2, mends, taken));
				}
			}
			areas.add(new Area(new Outline(kept), area.rule()));
		}
		if (mends.isEmpty()) {
			areas = artwork.areas();
		} else {
			// what stood in a hole that is gone is part of the area round it
			Region region = UnitedAreas.region(areas, tolerance, monitor, new ArrayList<>());
			areas = region.isEmpty() ? List.of() : List.of(Area.of(region));
		}
		List<Contour> lines = new ArrayList<>();
		for (Contour line : artwork.lines()) {
			if (line.isEmpty()) {
				continue;
			}
			if (isSmall(line, speck)) {
				mends.add(new Mend("short-line-removed", line.bounds().centre(), line.length(), "mm"));
				taken.add(line);
			} else {
				lines.add(line);
			}
		}
		return new Mended(new Artwork(areas, lines), mends, taken, List.of());
	}

	private static boolean isSmall(Contour contour, double size) {
		Bounds bounds = contour.bounds();
		return Math.max(bounds.width(), bounds.height()) < size;
	}

	/** Of a long strip: its area over half the way round it. */
	private static double width(Contour contour) {
		return 2 * Math.abs(contour.signedArea()) / contour.length();
	}
}
