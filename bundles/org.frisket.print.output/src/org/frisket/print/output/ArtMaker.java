package org.frisket.print.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.frisket.model.BleedKind;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.page.Ink;
import org.frisket.prepare.PreparedPicture;
import org.frisket.sheets.LaidPart;

/** From what lies on a side of a sheet to what is printed there. */
final class ArtMaker {

	private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final Set<OperationKind> SEVERING = Set.of(OperationKind.CUT, OperationKind.KISS_CUT,
			OperationKind.PERFORATE);

	private final SheetFaces faces;
	private final PrintOptions options;
	private final List<Bounds> quiet;
	private final Tolerance tolerance;
	private final Monitor monitor;
	private final RegionBoolean regions = new RegionBoolean();
	private final Map<Integer, Region> pieces = new HashMap<>();
	private final Map<List<Number>, BleedZone> zones = new HashMap<>();
	private final Set<Integer> shortened = new TreeSet<>();

	/** @param quiet boxes that bleed does not run into */
	ArtMaker(SheetFaces faces, PrintOptions options, List<Bounds> quiet, Tolerance tolerance, Monitor monitor) {
		this.faces = faces;
		this.options = options;
		this.quiet = quiet;
		this.tolerance = tolerance;
		this.monitor = monitor;
	}

	List<PrintedArt> of(boolean back) {
		List<PrintedArt> art = new ArrayList<>();
		for (FaceItem item : faces.items(back)) {
			monitor.check();
			if (item.element().has(OperationKind.PRINT)) {
				art.add(item.element().picture().isPresent() ? picture(item, item.element().picture().get()) : plain(item));
			}
		}
		return art;
	}

	/** Numbers of the parts, from 0, whose bleed ends at another part. */
	Set<Integer> shortened() {
		return shortened;
	}

	/** What of a part comes off the sheet as one, whichever side is printed. */
	Region pieces(int part) {
		return pieces.computeIfAbsent(part, each -> {
			List<Region> cut = new ArrayList<>();
			for (FaceItem item : faces.items(false)) {
				if (item.part() == each && item.element().operations().stream().map(Operation::getKind).anyMatch(SEVERING::contains)) {
					cut.add(item.element().region());
				}
			}
			return cut.isEmpty() ? Region.EMPTY : regions.union(cut, tolerance, monitor);
		});
	}

	private PrintedArt plain(FaceItem item) {
		Region own = item.element().region();
		Region area = bare(with(own, zone(own, item, options.bleed())), item);
		String colour = item.layer().getColour();
		return new PrintedArt(area, bare(own, item), Optional.empty(), 1, true, false, item.element().lines(),
				colour != null && COLOUR.matcher(colour).matches() ? colour : Ink.of(OperationKind.PRINT).colour());
	}

	private PrintedArt picture(FaceItem item, PreparedPicture pixels) {
		Picture picture = item.picture().orElseThrow();
		boolean edged = picture.getEdge() != null;
		Region own = item.element().region();
		if (edged && picture.getEdge().getBorder() > 0) {
			// the border is bare paper
			own = Offset.of(own, -picture.getEdge().getBorder(), Corners.ROUND, Holes.KEEP, tolerance, monitor);
		}
		double bleed = picture.getBleed() > 0 ? picture.getBleed() : options.bleed();
		Region zone = zone(own, item, bleed);
		Region area = bare(with(own, zone), item);
		boolean larger = picture.getBleedKind() == BleedKind.ENLARGE && !zone.isEmpty();
		boolean clipped = edged || !zone.isEmpty() || !item.covered().isEmpty();
		return new PrintedArt(area, bare(own, item), Optional.of(larger ? enlarged(pixels, bleed) : pixels), pixels.page(), clipped,
				!larger && !zone.isEmpty(), List.of(), Ink.of(OperationKind.PRINT).colour());
	}

	/** So much wider on every side of the picture; of art that is hollow at its edge it may not reach everywhere. */
	private static PreparedPicture enlarged(PreparedPicture picture, double by) {
		Transform place = picture.place();
		double width = Math.hypot(place.a(), place.b());
		double height = Math.hypot(place.c(), place.d());
		Transform larger = Transform.translation(-0.5, -0.5).then(Transform.scaling(1 + 2 * by / width, 1 + 2 * by / height))
				.then(Transform.translation(0.5, 0.5));
		return new PreparedPicture(picture.image(), picture.page(), larger.then(place));
	}

	private Region zone(Region own, FaceItem item, double bleed) {
		List<Region> keptOff = new ArrayList<>();
		for (int i = 0; i < faces.parts().size(); i++) {
			LaidPart other = faces.parts().get(i);
			if (i != item.part() && other.room().bounds().grown(bleed).intersects(own.bounds())) {
				keptOff.add(other.room());
			}
		}
		quiet.forEach(box -> keptOff.add(BleedZone.rectangle(box)));
		Region cut = pieces(item.part());
		BleedZone zone = zones.computeIfAbsent(List.of(item.part(), bleed),
				key -> new BleedZone(cut, bleed, tolerance, monitor));
		Region free = zone.of(own, keptOff);
		if (!free.isEmpty() && keptOff.stream().anyMatch(zone::reaches)) {
			shortened.add(item.part());
		}
		return free;
	}

	private Region with(Region own, Region zone) {
		return zone.isEmpty() ? own : regions.union(List.of(own, zone), tolerance, monitor);
	}

	private Region bare(Region area, FaceItem item) {
		return item.covered().isEmpty() ? area : regions.subtract(area, item.covered(), tolerance, monitor);
	}
}
