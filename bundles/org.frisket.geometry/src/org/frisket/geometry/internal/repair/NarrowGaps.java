package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Artwork.Area;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairStep;

/**
 * Fills gaps, in areas and between them, that are narrower than a width; a filling ends in a round mouth as wide as
 * that. What is away from gaps stays as it is, inner corners too. Off unless asked for: a hairline between two areas may
 * be meant, as a line to fold or to tear along, and what is too narrow to be told apart is filled by the union anyway.
 */
public final class NarrowGaps implements RepairStep {

	private static final double WIDEST = 20;

	private static final Option GAP = Option.length("gap", Words.of("NarrowGaps_gap"), "0mm", 0, WIDEST);

	/** Parts of the tolerance: for the fillings, and for uniting areas with them. */
	private static final double FILLINGS = 0.4;
	private static final double ORDER = 0.5;

	@Override
	public List<Option> options() {
		return List.of(GAP);
	}

	@Override
	public Moves moves(OptionValues options) {
		return options.length(GAP) > 0 ? Moves.ALL : Moves.NOTHING;
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		if (options.length(GAP) == 0 || artwork.areas().isEmpty()) {
			return new Mended(artwork, List.of());
		}
		Region region = UnitedAreas.region(artwork.areas(), tolerance.share(ORDER / 2), monitor, new ArrayList<>());
		List<GapFilling> fillings = GapFilling.of(region, options.length(GAP), tolerance.share(FILLINGS), monitor);
		if (fillings.isEmpty()) {
			return new Mended(artwork, List.of());
		}
		List<Contour> contours = new ArrayList<>(region.contours());
		List<Contour> brought = new ArrayList<>();
		List<Mend> mends = new ArrayList<>();
		for (GapFilling filling : fillings) {
			brought.addAll(filling.region().contours());
			mends.add(new Mend("gap-healed", filling.widest(), filling.width(), "mm"));
		}
		contours.addAll(brought);
		List<Area> together = List.of(new Area(new Outline(contours), FillRule.NON_ZERO));
		Region healed = UnitedAreas.region(together, tolerance.share(ORDER / 2), monitor, new ArrayList<>());
		return new Mended(artwork.withAreas(List.of(Area.of(healed))), mends, List.of(), brought);
	}
}
