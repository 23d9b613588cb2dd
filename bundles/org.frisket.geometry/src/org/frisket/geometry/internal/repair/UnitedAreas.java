package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.CleanResult;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Artwork.Area;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;

/**
 * All areas become one clean region. Each is cleaned by its own rule first, so that two that run opposite ways add up
 * instead of cancelling out.
 */
public final class UnitedAreas implements RepairStep {

	@Override
	public List<Option> options() {
		return List.of();
	}

	@Override
	public boolean settles() {
		return true;
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		List<Mend> mends = new ArrayList<>();
		Region all = region(artwork.areas(), tolerance, monitor, mends);
		return new Mended(artwork.withAreas(all.isEmpty() ? List.of() : List.of(Area.of(all))), mends);
	}

	/** All of them as one. */
	static Region region(List<Area> areas, Tolerance tolerance, Monitor monitor, List<Mend> mends) {
		// the same for a single one, so that what comes of several is left alone when it comes again
		Tolerance share = tolerance.share(0.5);
		List<Region> regions = new ArrayList<>();
		for (Area area : areas) {
			regions.add(cleaned(area, share, monitor, mends));
		}
		Region all = regions.isEmpty() ? Region.EMPTY : regions.get(0);
		if (regions.size() > 1) {
			Outline together = regions.stream().map(Region::toOutline).reduce(Outline.EMPTY, Outline::plus);
			all = cleaned(new Area(together, FillRule.NON_ZERO), share, monitor, mends);
		}
		return all;
	}

	private static Region cleaned(Area area, Tolerance tolerance, Monitor monitor, List<Mend> mends) {
		CleanResult result = new OutlineCleaner().clean(area.outline(), area.rule(), tolerance, monitor);
		mends.addAll(RepairMends.of(result.repairs()));
		return result.region();
	}
}
