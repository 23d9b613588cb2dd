package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

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
 * Puts straight lines level or plumb that are nearly so. Neighbours that run the same way come to lie on one line; if
 * that would take any of them further than the tolerance, they all stay. Off unless asked for: a slight slant may be
 * meant, and nothing in a file tells.
 */
public final class LevelLines implements RepairStep {

	private static final double MOST = 1;
	private static final Option LEVEL = Option.length("level", Words.of("LevelLines_level"), "0mm", 0, MOST);

	/** Parts of the tolerance: for the lines, for flattening, and for putting areas in order afterwards. */
	private static final double LINES = 0.7;
	private static final double FLATTENING = 0.05;
	private static final double ORDER = 0.2;

	@Override
	public List<Option> options() {
		return List.of(LEVEL);
	}

	@Override
	public Moves moves(OptionValues options) {
		return options.length(LEVEL) > 0 ? Moves.ALL : Moves.NOTHING;
	}

	@Override
	public Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor) {
		if (options.length(LEVEL) == 0) {
			return new Mended(artwork, List.of());
		}
		Levelling levelling = new Levelling(options.length(LEVEL), LINES * tolerance.mm());
		List<Mend> mends = new ArrayList<>();
		List<Contour> lines = levelled(artwork.lines(), levelling, monitor, mends);
		int before = mends.size();
		List<Area> areas = artwork.areas().stream().map(area -> new Area(new Outline(Apart.kept(
				area.outline().contours(), levelled(area.outline().contours(), levelling, monitor, mends),
				FLATTENING * tolerance.mm(), mends)), area.rule())).toList();
		if (mends.size() == before) {
			return new Mended(artwork.withLines(lines), mends);
		}
		Region region = UnitedAreas.region(areas, tolerance.share(ORDER), monitor, new ArrayList<>());
		return new Mended(new Artwork(List.of(Area.of(region)), lines), mends);
	}

	private static List<Contour> levelled(List<Contour> contours, Levelling levelling, Monitor monitor,
			List<Mend> mends) {
		List<Contour> levelled = new ArrayList<>();
		for (Contour contour : contours) {
			monitor.check();
			Contour level = levelling.of(contour);
			levelled.add(level);
			if (level != contour) {
				mends.add(new Mend("lines-levelled", contour.start(), levelling.moved(contour, level), "mm"));
			}
		}
		return levelled;
	}
}
