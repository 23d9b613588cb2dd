package org.frisket.imports.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.measure.PieceLocator;
import org.frisket.geometry.repair.Artwork;
import org.frisket.geometry.repair.Mend;
import org.frisket.geometry.repair.Mended;
import org.frisket.geometry.repair.RepairCourse;
import org.frisket.imports.ImportedShape;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Picture;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.repair.RepairSteps;

/**
 * One layer while it is filled. Areas are repaired each by itself, so that those lying on each other stay apart; lines
 * are repaired together, for what is drawn as one line often comes in pieces. Lines that lie on an area are worked
 * there, and bound no area of their own.
 */
final class TakenLayer {

	/** Of its length; a line whose ends lie no further apart was meant to close. Common practice, no source. */
	private static final double LOOP = 0.1;

	private final Layer layer;
	private final ArtRules rules;
	private final Tolerance tolerance;
	private final Monitor monitor;
	private final List<Mend> mends = new ArrayList<>();
	private final List<Contour> open = new ArrayList<>();
	private final Set<Outline> seen = new HashSet<>();
	private final List<PieceLocator> filled = new ArrayList<>();
	private int areas;
	private int lines;

	TakenLayer(Layer layer, ArtRules rules, Tolerance tolerance, Monitor monitor) {
		this.layer = layer;
		this.rules = rules;
		this.tolerance = tolerance;
		this.monitor = monitor;
	}

	TakenArt.Layer told(String name) {
		int pictures = (int) layer.getElements().stream().filter(Picture.class::isInstance).count();
		return new TakenArt.Layer(name, areas, lines, pictures, mends, open);
	}

	void area(ImportedShape.Area source) throws ContributionException {
		if (source.outline().isEmpty()) {
			return;
		}
		if (rules.course().isEmpty()) {
			add(source.name(), unruled(source), rules.areas());
			areas++;
			return;
		}
		if (!seen.add(source.outline())) {
			mends.add(new Mend("duplicate-removed", source.outline().bounds().centre(),
					source.outline().contours().stream().mapToDouble(Contour::length).sum(), "mm"));
			return;
		}
		Artwork mended = mended(rules.course().get(),
				new Artwork(List.of(new Artwork.Area(source.outline(), source.rule())), List.of()));
		for (Artwork.Area area : mended.areas()) {
			add(source.name(), area.outline(), rules.areas());
			areas++;
		}
	}

	/** A job fills by the nonzero rule; nothing else is changed. */
	private Outline unruled(ImportedShape.Area source) {
		return source.rule() == FillRule.NON_ZERO ? source.outline()
				: new OutlineCleaner().clean(source.outline(), source.rule(), tolerance, monitor).region().toOutline();
	}

	void lines(List<ImportedShape.Lines> sources) throws ContributionException {
		if (rules.course().isEmpty()) {
			for (ImportedShape.Lines source : sources) {
				add(source.name(), source.outline(), rules.lines());
				lines += source.outline().contours().size();
			}
			return;
		}
		fill();
		List<ImportedShape.Lines> apart = new ArrayList<>();
		List<ImportedShape.Lines> onAreas = new ArrayList<>();
		sources.forEach(source -> (isOnArea(source.outline()) ? onAreas : apart).add(source));
		lines(rules.course(), apart);
		lines(rules.onAreas(), onAreas);
	}

	private void lines(Optional<RepairCourse> course, List<ImportedShape.Lines> sources) throws ContributionException {
		List<Contour> all = sources.stream().flatMap(source -> source.outline().contours().stream()).toList();
		if (all.isEmpty()) {
			return;
		}
		Artwork mended = mended(course.orElseThrow(), new Artwork(List.of(), all));
		LineNames names = new LineNames(sources, layer.getName(), tolerance);
		for (Artwork.Area area : mended.areas()) {
			for (List<Contour> piece : pieces(area.outline().contours())) {
				add(names.of(piece.get(0)), new Outline(piece), rules.areas());
				areas++;
			}
		}
		Map<String, List<Contour>> byName = new LinkedHashMap<>();
		for (Contour line : mended.lines()) {
			lines++;
			byName.computeIfAbsent(names.of(line), name -> new ArrayList<>()).add(line);
			if (!line.isClosed() && line.end().distance(line.start()) <= LOOP * line.length()) {
				open.add(line);
			}
		}
		byName.forEach((name, contours) -> add(name, new Outline(contours), rules.lines()));
	}

	/** Outer contours, which run counter-clockwise to the viewer, each with the holes that follow it. */
	private static List<List<Contour>> pieces(List<Contour> contours) {
		List<List<Contour>> pieces = new ArrayList<>();
		for (Contour contour : contours) {
			if (contour.signedArea() < 0 || pieces.isEmpty()) {
				pieces.add(new ArrayList<>());
			}
			pieces.get(pieces.size() - 1).add(contour);
		}
		return pieces;
	}

	private Artwork mended(RepairCourse course, Artwork artwork) throws ContributionException {
		Mended mended = RepairSteps.run(course, artwork, tolerance, monitor::isCancelled);
		mends.addAll(mended.mends());
		return mended.artwork();
	}

	private void fill() {
		Outline all = layer.getElements().stream().filter(org.frisket.model.Outline.class::isInstance)
				.map(element -> PathData.parse(((org.frisket.model.Outline) element).getPathData()))
				.reduce(Outline.EMPTY, Outline::plus);
		if (!all.isEmpty()) {
			new OutlineCleaner().clean(all, FillRule.NON_ZERO, tolerance, monitor).region().pieces()
					.forEach(piece -> filled.add(new PieceLocator(piece, tolerance)));
		}
	}

	private boolean isOnArea(Outline outline) {
		return outline.contours().stream().filter(contour -> !contour.isEmpty()).findFirst()
				.map(contour -> contour.segments().get(contour.segments().size() / 2).start())
				.filter(this::isFilled).isPresent();
	}

	private boolean isFilled(Point place) {
		return filled.stream().anyMatch(piece -> piece.holds(place) && piece.distance(place) > tolerance.mm());
	}

	private void add(String name, Outline outline, OperationKind kind) {
		org.frisket.model.Outline element = FrisketFactory.INSTANCE.createOutline();
		element.setPathData(PathData.format(outline));
		element.setName(name.isEmpty() ? null : name);
		Jobs.addOperation(element, kind);
		layer.getElements().add(element);
	}
}
